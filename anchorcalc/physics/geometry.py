"""Lengths, heights and circles of a boat that lies to a taut line.

A taut straight line from the roller to the anchor is the longest reach that the rode allows, and so the safe side for
every circle; a sagging chain only draws the boat closer in.
"""

import numpy as np

from anchorcalc.physics.arrays import Array, not_below_zero


def rode_at_scope(*, height: Array, scope: Array) -> Array:
    """Rode that gives a scope at a height.

    Parameters
    ----------
    height : float or array
        Height of the roller above the seabed (depth + tide_rise + bow_height), [m]; > 0.
    scope : float or array
        Rode out over height, [-]; >= 1.

    Returns
    -------
    float or array
        Rode from roller to anchor, [m].

    Notes
    -----
    Scope is rode over total height. Source: US Sailing basic keelboat text, electronic 5th ed., p. 84.

    Examples
    --------
    >>> rode_at_scope(height=5.0, scope=7.0)
    35.0
    """
    return height * scope


def scope_of(*, rode_out: Array, height: Array) -> Array:
    """Scope that a length of rode gives at a height.

    Parameters
    ----------
    rode_out : float or array
        Rode from roller to anchor, [m].
    height : float or array
        Height of the roller above the seabed, [m]; > 0.

    Returns
    -------
    float or array
        Scope, [-]; below 1 the anchor does not reach the bottom.

    Notes
    -----
    Inverse of `rode_at_scope`.

    Examples
    --------
    >>> scope_of(rode_out=35.0, height=5.0)
    7.0
    """
    return rode_out / height


def deepest_depth(*, rode: Array, scope: Array, bow_height: Array, tide_rise: Array) -> Array:
    """Deepest water now in which a length of rode gives a scope at high water.

    Parameters
    ----------
    rode : float or array
        Rode that can go out (rode_aboard - reserve), [m].
    scope : float or array
        Scope wanted, [-]; >= 1.
    bow_height : float or array
        Roller above the water, [m]; >= 0.
    tide_rise : float or array
        Rise still to come, [m]; >= 0.

    Returns
    -------
    float or array
        Depth at the present tide, [m]; negative where the rode serves no depth at all. Add tide_rise for the depth at
        high water.

    Notes
    -----
    `rode_at_scope` solved for the depth. Source: US Sailing basic keelboat text, electronic 5th ed., p. 84, inverted.

    Examples
    --------
    >>> deepest_depth(rode=35.0, scope=7.0, bow_height=1.0, tide_rise=0.5)
    3.5
    """
    return rode / scope - bow_height - tide_rise


def taut_reach(*, rode_out: Array, height: Array) -> Array:
    """How far from the anchor a taut line lets the roller lie, along the water.

    Parameters
    ----------
    rode_out : float or array
        Rode from roller to anchor, [m].
    height : float or array
        Height of the roller above the seabed, [m]; >= 0.

    Returns
    -------
    float or array
        Reach √(rode_out² − height²), [m]; nan where the rode is shorter than the height: the anchor is not on the bottom.

    Notes
    -----
    Source: swing radius = length over all + √(rode² − (depth + freeboard)²), as printed on two seamanship pages. The
    straight line is the longest reach there is, save for the stretch of a rope.

    Examples
    --------
    >>> float(taut_reach(rode_out=5.0, height=3.0))
    4.0
    """
    square = (rode_out - height) * (rode_out + height)  # as a product: no loss of digits where the two are nearly alike
    return np.sqrt(np.where(np.less(square, 0.0), np.nan, square))


def rode_at_reach(*, reach: Array, height: Array) -> Array:
    """Longest rode whose taut line reaches no farther than this along the water.

    Parameters
    ----------
    reach : float or array
        Room from the anchor to the roller, along the water, [m]; >= 0.
    height : float or array
        Height of the roller above the seabed, [m]; >= 0.

    Returns
    -------
    float or array
        Rode from roller to anchor, [m].

    Notes
    -----
    Inverse of `taut_reach`.

    Examples
    --------
    >>> float(rode_at_reach(reach=4.0, height=3.0))
    5.0
    """
    return np.hypot(reach, height)


def circle_area(*, radius: Array) -> Array:
    """Area of the circle that the boat sweeps.

    Parameters
    ----------
    radius : float or array
        Radius of the circle, [m]; >= 0.

    Returns
    -------
    float or array
        Area, [m²].

    Examples
    --------
    >>> round(float(circle_area(radius=10.0)), 3)
    314.159
    """
    return np.pi * radius * radius


def line_angle(*, scope: Array) -> Array:
    """Angle of a taut straight line below the horizontal.

    Parameters
    ----------
    scope : float or array
        Rode out over height, [-]; >= 1.

    Returns
    -------
    float or array
        Angle at the roller, and at the seabed too, [rad].

    Notes
    -----
    sin(angle) = 1/scope: the sine rule, any trigonometry table.

    Examples
    --------
    >>> round(float(np.degrees(line_angle(scope=2.0))), 6)
    30.0
    """
    return np.arcsin(1.0 / scope)


def scope_at_angle(*, angle: Array) -> Array:
    """Scope of a taut straight line that leaves the roller at an angle.

    Parameters
    ----------
    angle : float or array
        Line below the horizontal, [rad]; above 0, at most π/2.

    Returns
    -------
    float or array
        Scope, [-]. A sagging chain hangs steeper at the roller than a taut line: its scope is greater than this.

    Notes
    -----
    Inverse of `line_angle`.

    Examples
    --------
    >>> round(float(scope_at_angle(angle=np.radians(30.0))), 9)
    2.0
    """
    return 1.0 / np.sin(angle)


def height_at_low_water(*, depth: Array, tide_fall: Array, bow_height: Array) -> Array:
    """Height of the roller above the seabed at the lowest water of the stay.

    Parameters
    ----------
    depth, tide_fall, bow_height : float or array
        Depth now, fall still to come, and roller above the water, [m]; >= 0.

    Returns
    -------
    float or array
        Height, [m]; where the place dries, the bow height alone.

    Examples
    --------
    >>> float(height_at_low_water(depth=5.0, tide_fall=1.5, bow_height=1.2))
    4.7
    """
    return not_below_zero(depth - tide_fall) + bow_height
