"""Local metres about the anchor against published lines on the ellipsoid, and against the general geodesy library.

The published lines of thousands of kilometres test a geodesic, which this is not: what matters there is only that a fix far
away is never taken for one close by.
"""

import numpy as np
import numpy.testing as npt
import pytest
from pyproj import Geod

from anchorcalc.physics.geodesy import Offset, bearing, distance_off, offset_from

WGS84 = Geod(ellps="WGS84")


def offset(*, here: tuple[float, float], there: tuple[float, float]) -> Offset:
    """Offset between two places in degrees."""
    (anchor_latitude, anchor_longitude), (latitude, longitude) = np.radians(here), np.radians(there)
    return offset_from(anchor_latitude=anchor_latitude, anchor_longitude=anchor_longitude, latitude=latitude, longitude=longitude)


# WGS 84 definition, solved with two reference libraries that agree (computed); to 1 mm and 0.005 degree.
@pytest.mark.parametrize(
    ("here", "there", "distance", "azimuth"),
    [
        ((59.31400000, 18.91200000), (59.31406347, 18.91212416), 9.9996, 45.0018),
        ((41.49010000, -71.31280000), (41.48994648, -71.31258106), 25.0001, 133.0014),
        ((-36.84060000, 174.77220000), (-36.84058820, 174.77163964), 49.9997, 271.5006),
        ((50.35200000, -4.14600000), (50.35115522, -4.14648055), 100.0003, 199.9998),
        ((0.00030000, -90.31200000), (-0.00105655, -90.31200000), 149.9995, 180.0),  # across the equator
        ((-16.80000000, 179.99950000), (-16.79968617, -179.99865230), 200.0002, 80.0),  # across the 180th meridian
        ((78.23000000, 15.60000000), (78.23189987, 15.59068653), 299.9998, 315.0),
        ((18.42070000, -64.62000000), (18.42514868, -64.61917818), 499.9996, 10.0),
    ],
)
def test_short_line_has_the_published_length_and_azimuth(
    here: tuple[float, float], there: tuple[float, float], distance: float, azimuth: float
) -> None:
    east, north = offset(here=here, there=there)
    npt.assert_allclose(distance_off(east=east, north=north), distance, rtol=0, atol=0.001)
    npt.assert_allclose(np.degrees(bearing(east=east, north=north)), azimuth, rtol=0, atol=0.005)


def test_line_of_72_mm_is_72_mm() -> None:  # GeographicLib test suite, GeodSolve4 (read)
    east, north = offset(here=(36.493349428792, 0.0), there=(36.49334942879201, 0.0000008))
    npt.assert_allclose(distance_off(east=east, north=north), 0.072, rtol=0, atol=0.0005)


SECOND, MINUTE = 1 / 3600, 1 / 60


@pytest.mark.parametrize(
    ("here", "there", "distance", "tolerance"),
    [
        ((0.0, 0.0), (SECOND, 0.0), 30.715, 0.0005),  # encyclopaedia entry on geographic coordinates (read)
        ((0.0, 0.0), (MINUTE, 0.0), 1843.0, 0.5),  # the same
        ((0.0, 0.0), (0.0, SECOND), 30.92, 0.005),  # the same
        ((30.0, 0.0), (30.0, SECOND), 26.802, 0.0005),  # computed on the ellipsoid; the entry's 26.76 is 0.16 % short
        ((60.0, 0.0), (60.0, SECOND), 15.500, 0.0005),  # computed on the ellipsoid; the entry's 15.42 is 0.5 % short
    ],
)
def test_second_and_minute_have_the_published_length(
    here: tuple[float, float], there: tuple[float, float], distance: float, tolerance: float
) -> None:
    east, north = offset(here=here, there=there)
    npt.assert_allclose(distance_off(east=east, north=north), distance, rtol=0, atol=tolerance)


# Radii of curvature M = a(1−e²)/W³ and N·cos φ (formula read on a reference page, computed), to 0.1 m a degree: asked here of a
# thousandth of a degree on either side of the latitude, where a degree of arc would be far outside any anchorage.
@pytest.mark.parametrize(
    ("latitude", "latitude_degree", "longitude_degree"),
    [(0, 110574.3, 111319.5), (30, 110852.4, 96486.3), (45, 111131.8, 78846.8), (60, 111412.3, 55800.0)],
)
def test_degree_has_the_published_length(latitude: float, latitude_degree: float, longitude_degree: float) -> None:
    northward = offset(here=(latitude - 0.001, 10.0), there=(latitude + 0.001, 10.0))
    eastward = offset(here=(latitude, 9.999), there=(latitude, 10.001))
    npt.assert_allclose(distance_off(east=northward.east, north=northward.north) / 0.002, latitude_degree, rtol=0, atol=0.1)
    npt.assert_allclose(distance_off(east=eastward.east, north=eastward.north) / 0.002, longitude_degree, rtol=0, atol=0.1)


# GeographicLib test suite and documentation (read): long lines, the last nearly antipodal.
@pytest.mark.parametrize(
    ("here", "there", "distance"),
    [
        ((40.6, -73.8), (49.01666667, 2.55), 5853226.0),
        ((35.60777, -139.44815), (-11.17491, -69.95921), 8935244.5605),
        ((55.52454, 106.05087), (77.03196, 197.18234), 4105086.1714),
        ((-21.97856, 142.59065), (41.84138, 98.56635), 8394328.8947),
        ((-68.82867, -74.28391), (-50.63005, -8.36685), 3956936.9261),
        ((-19.79938, -174.47484), (-11.99349, -154.35109), 2319004.8601),
        ((-41.22777, 122.32875), (-7.57291, 130.37946), 3812686.0351),
        ((-41.32, 174.81), (40.96, -5.50), 19959679.267),
    ],
)
def test_fix_on_another_continent_is_never_taken_for_one_close_by(here: tuple[float, float], there: tuple[float, float], distance: float) -> None:
    east, north = offset(here=here, there=there)
    # The sphere is up to 1/300 off the ellipsoid, and near the antipodes the arc hangs on the last part of the chord.
    npt.assert_allclose(distance_off(east=east, north=north), distance, rtol=0.015)


def test_flinders_peak_to_buninyong_is_55_km() -> None:  # Geocentric Datum of Australia manual (reproduction): 54 972.271 m, 306°52′05.37″
    here = -(37 + 57 / 60 + 3.72030 / 3600), 144 + 25 / 60 + 29.52440 / 3600
    there = -(37 + 39 / 60 + 10.15610 / 3600), 143 + 55 / 60 + 35.38390 / 3600
    east, north = offset(here=here, there=there)
    npt.assert_allclose(distance_off(east=east, north=north), 54972.271, rtol=0, atol=0.005)  # ten times the range asked for here
    npt.assert_allclose(np.degrees(bearing(east=east, north=north)), 306.868158, rtol=0, atol=0.00001)


def test_offset_agrees_with_the_geodesic_to_1_mm_within_5_km_all_over_the_earth() -> None:  # general geodesy library, inverse problem
    # A general geodesy library, inverse problem (computed).
    rng = np.random.default_rng(20)
    latitude, longitude = rng.uniform(-89.9, 89.9, 20000), rng.uniform(-180.0, 180.0, 20000)
    longitude[:5000] = rng.uniform(179.99, 180.01, 5000)  # across the date line
    latitude[5000:10000] = rng.uniform(-0.02, 0.02, 5000)  # across the equator
    there_longitude, there_latitude, _ = WGS84.fwd(longitude, latitude, rng.uniform(0, 360, 20000), rng.uniform(0, 5000, 20000))
    azimuth, _, distance = WGS84.inv(longitude, latitude, there_longitude, there_latitude)
    east, north = offset_from(
        anchor_latitude=np.radians(latitude),
        anchor_longitude=np.radians(longitude),
        latitude=np.radians(there_latitude),
        longitude=np.radians(there_longitude),
    )
    npt.assert_allclose(east, distance * np.sin(np.radians(azimuth)), rtol=0, atol=0.001)
    npt.assert_allclose(north, distance * np.cos(np.radians(azimuth)), rtol=0, atol=0.001)
