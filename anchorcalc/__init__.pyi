"""Written by `python -m anchorcalc.doors.stubs`: do not edit."""

from collections.abc import Mapping, Sequence
from datetime import datetime, time
from decimal import Decimal
from typing import Any, Protocol

from anchorcalc.answering.answers import AnchorSizeAnswer as AnchorSizeAnswer
from anchorcalc.answering.answers import AnchorSizeRead as AnchorSizeRead
from anchorcalc.answering.answers import BowAndSternAnswer as BowAndSternAnswer
from anchorcalc.answering.answers import BowAndSternRead as BowAndSternRead
from anchorcalc.answering.answers import ChainAndLineAnswer as ChainAndLineAnswer
from anchorcalc.answering.answers import ChainAndLineRead as ChainAndLineRead
from anchorcalc.answering.answers import DeepestAnchorageAnswer as DeepestAnchorageAnswer
from anchorcalc.answering.answers import DeepestAnchorageRead as DeepestAnchorageRead
from anchorcalc.answering.answers import DragCheckAnswer as DragCheckAnswer
from anchorcalc.answering.answers import DragCheckRead as DragCheckRead
from anchorcalc.answering.answers import HoldingAnswer as HoldingAnswer
from anchorcalc.answering.answers import HoldingRead as HoldingRead
from anchorcalc.answering.answers import LineAngleAnswer as LineAngleAnswer
from anchorcalc.answering.answers import LineAngleRead as LineAngleRead
from anchorcalc.answering.answers import MarkPlanAnswer as MarkPlanAnswer
from anchorcalc.answering.answers import MarkPlanRead as MarkPlanRead
from anchorcalc.answering.answers import MarkToStopAtAnswer as MarkToStopAtAnswer
from anchorcalc.answering.answers import MarkToStopAtRead as MarkToStopAtRead
from anchorcalc.answering.answers import PullAtAnchorAnswer as PullAtAnchorAnswer
from anchorcalc.answering.answers import PullAtAnchorRead as PullAtAnchorRead
from anchorcalc.answering.answers import RodeForFlatPullAnswer as RodeForFlatPullAnswer
from anchorcalc.answering.answers import RodeForFlatPullRead as RodeForFlatPullRead
from anchorcalc.answering.answers import RodeForRoomAnswer as RodeForRoomAnswer
from anchorcalc.answering.answers import RodeForRoomRead as RodeForRoomRead
from anchorcalc.answering.answers import RodeToCarryAnswer as RodeToCarryAnswer
from anchorcalc.answering.answers import RodeToCarryRead as RodeToCarryRead
from anchorcalc.answering.answers import RodeToLetOutAnswer as RodeToLetOutAnswer
from anchorcalc.answering.answers import RodeToLetOutRead as RodeToLetOutRead
from anchorcalc.answering.answers import ScopeNowAnswer as ScopeNowAnswer
from anchorcalc.answering.answers import ScopeNowRead as ScopeNowRead
from anchorcalc.answering.answers import SettingPullAnswer as SettingPullAnswer
from anchorcalc.answering.answers import SettingPullRead as SettingPullRead
from anchorcalc.answering.answers import ShallowestAnchorageAnswer as ShallowestAnchorageAnswer
from anchorcalc.answering.answers import ShallowestAnchorageRead as ShallowestAnchorageRead
from anchorcalc.answering.answers import SwingClearanceAnswer as SwingClearanceAnswer
from anchorcalc.answering.answers import SwingClearanceRead as SwingClearanceRead
from anchorcalc.answering.answers import SwingRadiusAnswer as SwingRadiusAnswer
from anchorcalc.answering.answers import SwingRadiusRead as SwingRadiusRead
from anchorcalc.answering.answers import TackleCheckAnswer as TackleCheckAnswer
from anchorcalc.answering.answers import TackleCheckRead as TackleCheckRead
from anchorcalc.answering.answers import TideAtAnswer as TideAtAnswer
from anchorcalc.answering.answers import TideAtRead as TideAtRead
from anchorcalc.answering.answers import TimeToLetGoAnswer as TimeToLetGoAnswer
from anchorcalc.answering.answers import TimeToLetGoRead as TimeToLetGoRead
from anchorcalc.answering.answers import TrueDepthAnswer as TrueDepthAnswer
from anchorcalc.answering.answers import TrueDepthRead as TrueDepthRead
from anchorcalc.answering.answers import TwoAnchorLoadAnswer as TwoAnchorLoadAnswer
from anchorcalc.answering.answers import TwoAnchorLoadRead as TwoAnchorLoadRead
from anchorcalc.answering.answers import WeighAnchorAnswer as WeighAnchorAnswer
from anchorcalc.answering.answers import WeighAnchorRead as WeighAnchorRead
from anchorcalc.answering.answers import WhenToVeerAnswer as WhenToVeerAnswer
from anchorcalc.answering.answers import WhenToVeerRead as WhenToVeerRead
from anchorcalc.answering.answers import WhereToDropAnswer as WhereToDropAnswer
from anchorcalc.answering.answers import WhereToDropRead as WhereToDropRead
from anchorcalc.answering.answers import WindLoadAnswer as WindLoadAnswer
from anchorcalc.answering.answers import WindLoadRead as WindLoadRead
from anchorcalc.answering.replies import Answer as Answer
from anchorcalc.answering.replies import Cannot as Cannot
from anchorcalc.answering.replies import Needs as Needs
from anchorcalc.answering.replies import Unclear as Unclear
from anchorcalc.doors.ask import ask as ask
from anchorcalc.doors.boats import load_boat as load_boat
from anchorcalc.doors.drawing import draw as draw
from anchorcalc.doors.fleet import check_table as check_table
from anchorcalc.doors.python import answer as answer
from anchorcalc.doors.python import load as load
from anchorcalc.doors.python import questions as questions
from anchorcalc.errors import AnchorcalcError as AnchorcalcError
from anchorcalc.errors import DecodeError as DecodeError
from anchorcalc.errors import Fault as Fault
from anchorcalc.errors import FileError as FileError
from anchorcalc.errors import InputError as InputError
from anchorcalc.errors import PictureError as PictureError
from anchorcalc.errors import TableError as TableError
from anchorcalc.errors import TextError as TextError
from anchorcalc.errors import UnknownQuestion as UnknownQuestion
from anchorcalc.reader.quantities import find_quantities as find_quantities
from anchorcalc.units.quantity import (
    ClockTime,
    Fix,
    ReadFixes,
    ReadFlag,
    ReadLengths,
    ReadPosition,
    ReadWord,
)
from anchorcalc.units.quantity import Quantity as Quantity

class _Pint(Protocol):
    """A pint quantity of any registry."""

    @property
    def magnitude(self) -> Any: ...
    @property
    def units(self) -> Any: ...
    @property
    def dimensionality(self) -> Any: ...

_Quantity = str | Quantity | Mapping[str, object] | _Pint
_Number = float | Decimal | str | Quantity | Mapping[str, object]
_Word = str | ReadWord
_Flag = bool | str | ReadFlag
_Clock = str | datetime | time | ClockTime
_Position = str | tuple[float, float] | Mapping[str, float] | ReadPosition
_Lengths = str | Sequence[_Quantity] | Mapping[str, object] | ReadLengths
_Fixes = str | Sequence[Mapping[str, object] | tuple[str, _Position] | Fix] | ReadFixes

_PUBLIC: dict[str, str]
__version__: str

def anchor_size(
    *,
    boat_length: _Quantity,
    load: _Quantity | None = None,
    wind: _Quantity | None = None,
    beam: _Quantity | None = None,
    boat_form: _Word | None = None,
    current: _Quantity | None = None,
    anchor_kind: _Word,
    bottom: _Word,
    scope: _Number | None = None,
    boat: Mapping[str, Any] | None = None,
    units: str | None = None,
) -> AnchorSizeAnswer:
    """How heavy an anchor to carry for this boat, wind and bottom.

    The greater of two: the least mass whose holding, at the low end of its band, meets the standard load; and a published table's row for her length.
    """

def bow_and_stern(
    *,
    slope: _Number,
    boat_length: _Quantity,
    draught: _Quantity,
    bow_height: _Quantity | None = None,
    tide_rise: _Quantity | None = None,
    tide_fall: _Quantity | None = None,
    scope: _Number | None = None,
    under_keel: _Quantity | None = None,
    rode_aboard: _Quantity | None = None,
    line: _Quantity | None = None,
    chain: _Quantity | None = None,
    boat: Mapping[str, Any] | None = None,
    units: str | None = None,
) -> BowAndSternAnswer:
    """Lying between an anchor out ahead and the beach astern: where to drop, how much rode, how near the stern may come.

    The beach falls evenly, one down for so many out; distances run seaward from the water's edge now.
    """

def chain_and_line(
    *,
    load: _Quantity | None = None,
    boat_length: _Quantity | None = None,
    wind: _Quantity | None = None,
    beam: _Quantity | None = None,
    boat_form: _Word | None = None,
    current: _Quantity | None = None,
    chain_size: _Quantity | None = None,
    chain_grade: _Word | None = None,
    line_size: _Quantity | None = None,
    line_material: _Word | None = None,
    shackle_size: _Quantity | None = None,
    boat: Mapping[str, Any] | None = None,
    units: str | None = None,
) -> ChainAndLineAnswer:
    """Whether chain, line and shackle carry the load, which of them is the weakest, and what to change to.

    Working loads from published tables against the standard load; a size between two rows counts as the weaker. Never a size down.
    """

def deepest_anchorage(
    *,
    rode_aboard: _Quantity | None = None,
    line: _Quantity | None = None,
    chain: _Quantity | None = None,
    bow_height: _Quantity | None = None,
    tide_rise: _Quantity | None = None,
    scope: _Number | None = None,
    reserve: _Quantity | None = None,
    boat: Mapping[str, Any] | None = None,
    units: str | None = None,
) -> DeepestAnchorageAnswer:
    """How deep the water may be for the rode aboard.

    The depth now at which the usable rode still gives the scope wanted at high water.
    """

def drag_check(
    *,
    anchor_at: _Position,
    fixes: _Fixes,
    rode_out: _Quantity,
    depth: _Quantity,
    boat_length: _Quantity,
    bow_height: _Quantity | None = None,
    tide_fall: _Quantity | None = None,
    antenna_from_bow: _Quantity | None = None,
    position_error: _Quantity | None = None,
    boat: Mapping[str, Any] | None = None,
    units: str | None = None,
) -> DragCheckAnswer:
    """Whether the boat is dragging, by where she has been.

    The watch circle is that of a taut line at low water, the antenna aft of the bow, and twice the error of a fix: what lies beyond it
    is dragging and not swinging. Two of the last five fixes outside, or a steady way outwards, are called dragging; one fix is not.
    """

def holding(
    *,
    anchor_kind: _Word,
    anchor_mass: _Quantity,
    bottom: _Word,
    pull_angle: _Quantity | None = None,
    scope: _Number | None = None,
    load: _Quantity | None = None,
    wind: _Quantity | None = None,
    boat_length: _Quantity | None = None,
    beam: _Quantity | None = None,
    boat_form: _Word | None = None,
    current: _Quantity | None = None,
    boat: Mapping[str, Any] | None = None,
    units: str | None = None,
) -> HoldingAnswer:
    """What an anchor may hold in a bottom, and at what wind it may drag.

    A wide band from published tests where there are any and common practice where there are none; rock, coral and weed have no figure.
    """

def line_angle(
    *,
    angle: _Quantity | None = None,
    scope: _Number | None = None,
    boat: Mapping[str, Any] | None = None,
    units: str | None = None,
) -> LineAngleAnswer:
    """What scope an angle of the line tells, or what angle a scope gives.

    A taut straight line: the sine of its angle below the horizontal is one over the scope.
    """

def mark_plan(
    *,
    rode_aboard: _Quantity | None = None,
    line: _Quantity | None = None,
    mark_interval: _Quantity | None = None,
    marks: _Lengths | None = None,
    marks_from: _Word | None = None,
    bow_height: _Quantity | None = None,
    scope: _Number | None = None,
    chain: _Quantity | None = None,
    reserve: _Quantity | None = None,
    boat: Mapping[str, Any] | None = None,
    units: str | None = None,
) -> MarkPlanAnswer:
    """The table to tape inside the locker lid: each mark, the rode out there, and the deepest water at high water that it serves."""

def mark_to_stop_at(
    *,
    mark_interval: _Quantity | None = None,
    marks: _Lengths | None = None,
    rode_out: _Quantity | None = None,
    scope: _Number | None = None,
    chain: _Quantity | None = None,
    marks_from: _Word | None = None,
    depth: _Quantity | None = None,
    bow_height: _Quantity | None = None,
    tide_rise: _Quantity | None = None,
    boat: Mapping[str, Any] | None = None,
    units: str | None = None,
) -> MarkToStopAtAnswer:
    """At which mark on the rode to stop.

    Marks count from the anchor, or from the end of the chain. The first mark at or beyond the length wanted is the one to stop at.
    """

def pull_at_anchor(
    *,
    rode_out: _Quantity,
    depth: _Quantity,
    load: _Quantity | None = None,
    boat_length: _Quantity | None = None,
    wind: _Quantity | None = None,
    beam: _Quantity | None = None,
    boat_form: _Word | None = None,
    current: _Quantity | None = None,
    bow_height: _Quantity | None = None,
    tide_rise: _Quantity | None = None,
    chain: _Quantity | None = None,
    chain_size: _Quantity | None = None,
    line_size: _Quantity | None = None,
    line_material: _Word | None = None,
    boat: Mapping[str, Any] | None = None,
    units: str | None = None,
) -> PullAtAnchorAnswer:
    """How the rode pulls at the anchor: at what angle, how much chain still lies, and where the bow is.

    Chain and line as two hanging lines in series under a steady load, at the highest water of the stay.
    """

def rode_for_flat_pull(
    *,
    depth: _Quantity,
    load: _Quantity | None = None,
    boat_length: _Quantity | None = None,
    wind: _Quantity | None = None,
    beam: _Quantity | None = None,
    boat_form: _Word | None = None,
    current: _Quantity | None = None,
    bow_height: _Quantity | None = None,
    tide_rise: _Quantity | None = None,
    chain: _Quantity | None = None,
    chain_size: _Quantity | None = None,
    line_size: _Quantity | None = None,
    line_material: _Word | None = None,
    scope: _Number | None = None,
    boat: Mapping[str, Any] | None = None,
    units: str | None = None,
) -> RodeForFlatPullAnswer:
    """How much rode makes the pull at the anchor just flat, and what the usual scope would give.

    The chain is given and the line behind it grows, at the highest water of the stay.
    """

def rode_for_room(
    *,
    distance: _Quantity,
    boat_length: _Quantity,
    depth: _Quantity,
    bow_height: _Quantity | None = None,
    tide_rise: _Quantity | None = None,
    tide_fall: _Quantity | None = None,
    margin: _Quantity | None = None,
    scope: _Number | None = None,
    boat: Mapping[str, Any] | None = None,
    units: str | None = None,
) -> RodeForRoomAnswer:
    """How much rode there is room for, and whether its scope will do.

    The longest rode whose taut line at low water keeps the stern clear, and the scope which that gives at high water.
    """

def rode_to_carry(
    *,
    depth: _Quantity,
    bow_height: _Quantity | None = None,
    tide_rise: _Quantity | None = None,
    scope: _Number | None = None,
    reserve: _Quantity | None = None,
    boat: Mapping[str, Any] | None = None,
    units: str | None = None,
) -> RodeToCarryAnswer:
    """What length of rode to carry for the deepest water intended."""

def rode_to_let_out(
    *,
    depth: _Quantity,
    bow_height: _Quantity | None = None,
    tide_rise: _Quantity | None = None,
    scope: _Number | None = None,
    chain: _Quantity | None = None,
    rode_aboard: _Quantity | None = None,
    line: _Quantity | None = None,
    reserve: _Quantity | None = None,
    mark_interval: _Quantity | None = None,
    marks: _Lengths | None = None,
    marks_from: _Word | None = None,
    boat: Mapping[str, Any] | None = None,
    units: str | None = None,
) -> RodeToLetOutAnswer:
    """How much rode to let out in this water.

    Scope times the height of the roller above the seabed at the highest water of the stay.
    """

def scope_now(
    *,
    rode_out: _Quantity,
    depth: _Quantity,
    bow_height: _Quantity | None = None,
    tide_rise: _Quantity | None = None,
    boat: Mapping[str, Any] | None = None,
    units: str | None = None,
) -> ScopeNowAnswer:
    """What scope the boat lies to, now and at high water."""

def setting_pull(
    *,
    boat_length: _Quantity,
    pull: _Quantity | None = None,
    engine_power: _Quantity | None = None,
    propeller_diameter: _Quantity | None = None,
    beam: _Quantity | None = None,
    boat_form: _Word | None = None,
    boat: Mapping[str, Any] | None = None,
    units: str | None = None,
) -> SettingPullAnswer:
    """How hard the engine can pull to set the anchor, and what wind that tests it for.

    Half of the least published bollard pull, or the pull that was measured; and the wind whose standard load is that pull.
    """

def shallowest_anchorage(
    *,
    draught: _Quantity,
    under_keel: _Quantity | None = None,
    tide_fall: _Quantity | None = None,
    depth: _Quantity | None = None,
    boat: Mapping[str, Any] | None = None,
    units: str | None = None,
) -> ShallowestAnchorageAnswer:
    """How shallow the water may be for the boat not to touch at low water."""

def swing_clearance(
    *,
    rode_out: _Quantity,
    depth: _Quantity,
    boat_length: _Quantity,
    distance: _Quantity,
    bow_height: _Quantity | None = None,
    tide_fall: _Quantity | None = None,
    margin: _Quantity | None = None,
    other_rode_out: _Quantity | None = None,
    other_boat_length: _Quantity | None = None,
    boat: Mapping[str, Any] | None = None,
    units: str | None = None,
) -> SwingClearanceAnswer:
    """Whether the boat swings clear of a danger or of a neighbour at anchor.

    Against a fixed thing the whole circle counts; against a boat at anchor, both circles, the boats swung towards each other.
    """

def swing_radius(
    *,
    rode_out: _Quantity,
    depth: _Quantity,
    boat_length: _Quantity,
    bow_height: _Quantity | None = None,
    tide_fall: _Quantity | None = None,
    boat: Mapping[str, Any] | None = None,
    units: str | None = None,
) -> SwingRadiusAnswer:
    """How large a circle the boat may swing.

    A taut line at low water, the stern outermost: the largest circle that the rode allows.
    """

def tackle_check(
    *,
    boat_length: _Quantity,
    depth: _Quantity | None = None,
    bow_height: _Quantity | None = None,
    scope: _Number | None = None,
    anchor_kind: _Word | None = None,
    anchor_mass: _Quantity | None = None,
    bottom: _Word | None = None,
    wind: _Quantity | None = None,
    beam: _Quantity | None = None,
    boat_form: _Word | None = None,
    current: _Quantity | None = None,
    chain: _Quantity | None = None,
    chain_size: _Quantity | None = None,
    chain_grade: _Word | None = None,
    line: _Quantity | None = None,
    line_size: _Quantity | None = None,
    line_material: _Word | None = None,
    rode_aboard: _Quantity | None = None,
    shackle_size: _Quantity | None = None,
    bitter_end: _Word | None = None,
    shackles: _Word | None = None,
    spare_anchor: _Flag | None = None,
    boat: Mapping[str, Any] | None = None,
    units: str | None = None,
) -> TackleCheckAnswer:
    """What is wrong with the ground tackle, worst first, and what was not checked because nobody said it.

    Each part against the boat, the wind and the deepest water, by published tables where there are any and common practice where there are none.
    """

def tide_at(
    *,
    low_height: _Quantity,
    low_at: _Clock,
    high_height: _Quantity,
    high_at: _Clock,
    at: _Clock,
    boat: Mapping[str, Any] | None = None,
    units: str | None = None,
) -> TideAtAnswer:
    """How high the tide stands at a time between low and high water.

    Half a cosine between the two, with the rule of twelfths beside it; and how much it has still to rise and to fall.
    """

def time_to_let_go(
    *,
    depth: _Quantity,
    distance_off: _Quantity,
    drift: _Quantity,
    boat_length: _Quantity,
    rode_aboard: _Quantity | None = None,
    line: _Quantity | None = None,
    chain: _Quantity | None = None,
    bow_height: _Quantity | None = None,
    reserve: _Quantity | None = None,
    scope: _Number | None = None,
    boat: Mapping[str, Any] | None = None,
    units: str | None = None,
) -> TimeToLetGoAnswer:
    """The engine has failed: when to let go the anchor at the latest, and with how much rode."""

def true_depth(
    *,
    reading: _Quantity,
    reads_from: _Word,
    transducer_depth: _Quantity | None = None,
    draught: _Quantity | None = None,
    boat: Mapping[str, Any] | None = None,
    units: str | None = None,
) -> TrueDepthAnswer:
    """How deep the water really is, from what the sounder shows.

    A sounder measures from the surface, from its transducer or (set so) from the keel; what lies above that must be added.
    """

def two_anchor_load(
    *,
    load: _Quantity | None = None,
    boat_length: _Quantity | None = None,
    wind: _Quantity | None = None,
    beam: _Quantity | None = None,
    boat_form: _Word | None = None,
    current: _Quantity | None = None,
    spread: _Quantity,
    wind_off: _Quantity | None = None,
    boat: Mapping[str, Any] | None = None,
    units: str | None = None,
) -> TwoAnchorLoadAnswer:
    """How two anchors share the load.

    The triangle of forces: the wider the two rodes spread, the more each carries. Above 170 degrees she lies to one at a time.
    """

def weigh_anchor(
    *,
    depth: _Quantity,
    anchor_mass: _Quantity,
    chain: _Quantity | None = None,
    chain_size: _Quantity | None = None,
    bow_height: _Quantity | None = None,
    line_size: _Quantity | None = None,
    boat_length: _Quantity | None = None,
    wind: _Quantity | None = None,
    current: _Quantity | None = None,
    beam: _Quantity | None = None,
    boat_form: _Word | None = None,
    boat: Mapping[str, Any] | None = None,
    units: str | None = None,
) -> WeighAnchorAnswer:
    """What must be hauled to get the anchor up, and whether hands can do it.

    The load as the anchor leaves the bottom, the pull that brings the boat up to it, and the windlass to look for. Breaking out asks more.
    """

def when_to_veer(
    *,
    rode_out: _Quantity,
    depth: _Quantity,
    bow_height: _Quantity | None = None,
    least_scope: _Number | None = None,
    low_height: _Quantity,
    low_at: _Clock,
    high_height: _Quantity,
    high_at: _Clock,
    at: _Clock,
    boat: Mapping[str, Any] | None = None,
    units: str | None = None,
) -> WhenToVeerAnswer:
    """Whether and when more rode must go out as the tide rises.

    The last moment at which the rode out still gives the least scope, by half a cosine between low and high water.
    """

def where_to_drop(
    *,
    rode_out: _Quantity | None = None,
    tide_rise: _Quantity | None = None,
    scope: _Number | None = None,
    depth: _Quantity,
    bow_height: _Quantity | None = None,
    boat_length: _Quantity | None = None,
    boat: Mapping[str, Any] | None = None,
    units: str | None = None,
) -> WhereToDropAnswer:
    """Where to drop the anchor for the bow to come to lie on a spot.

    As far upwind of the spot as a taut line of that length reaches.
    """

def wind_load(
    *,
    boat_length: _Quantity,
    wind: _Quantity,
    beam: _Quantity | None = None,
    boat_form: _Word | None = None,
    draught: _Quantity | None = None,
    current: _Quantity | None = None,
    boat: Mapping[str, Any] | None = None,
    units: str | None = None,
) -> WindLoadAnswer:
    """How hard wind and stream pull on the rode.

    The published design load, which strength and size go by, and beside it the steady drag alone. Neither knows of seas.
    """
