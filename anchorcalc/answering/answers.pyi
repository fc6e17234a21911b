"""Written by `python -m anchorcalc.doors.stubs`: do not edit."""

from typing import Literal

import msgspec

from anchorcalc.answering.replies import Answer
from anchorcalc.catalogue.anchor_size import AnchorSize
from anchorcalc.catalogue.bow_and_stern import BowAndStern
from anchorcalc.catalogue.chain_and_line import ChainAndLine
from anchorcalc.catalogue.deepest_anchorage import DeepestAnchorage
from anchorcalc.catalogue.drag_check import DragCheck
from anchorcalc.catalogue.holding import Holding
from anchorcalc.catalogue.line_angle import LineAngle
from anchorcalc.catalogue.mark_plan import MarkPlan
from anchorcalc.catalogue.mark_to_stop_at import MarkToStopAt
from anchorcalc.catalogue.pull_at_anchor import PullAtAnchor
from anchorcalc.catalogue.rode_for_flat_pull import RodeForFlatPull
from anchorcalc.catalogue.rode_for_room import RodeForRoom
from anchorcalc.catalogue.rode_to_carry import RodeToCarry
from anchorcalc.catalogue.rode_to_let_out import RodeToLetOut
from anchorcalc.catalogue.scope_now import ScopeNow
from anchorcalc.catalogue.setting_pull import SettingPull
from anchorcalc.catalogue.shallowest_anchorage import ShallowestAnchorage
from anchorcalc.catalogue.swing_clearance import SwingClearance
from anchorcalc.catalogue.swing_radius import SwingRadius
from anchorcalc.catalogue.tackle_check import TackleCheck
from anchorcalc.catalogue.tide_at import TideAt
from anchorcalc.catalogue.time_to_let_go import TimeToLetGo
from anchorcalc.catalogue.true_depth import TrueDepth
from anchorcalc.catalogue.two_anchor_load import TwoAnchorLoad
from anchorcalc.catalogue.weigh_anchor import WeighAnchor
from anchorcalc.catalogue.when_to_veer import WhenToVeer
from anchorcalc.catalogue.where_to_drop import WhereToDrop
from anchorcalc.catalogue.wind_load import WindLoad
from anchorcalc.units.quantity import (
    ReadClock,
    ReadFixes,
    ReadFlag,
    ReadLengths,
    ReadPosition,
    ReadQuantity,
    ReadWord,
)

class ReadSoFar(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True):
    depth: ReadQuantity | None = None
    tide_rise: ReadQuantity | None = None
    tide_fall: ReadQuantity | None = None
    low_height: ReadQuantity | None = None
    low_at: ReadClock | None = None
    high_height: ReadQuantity | None = None
    high_at: ReadClock | None = None
    at: ReadClock | None = None
    slope: ReadQuantity | None = None
    under_keel: ReadQuantity | None = None
    reading: ReadQuantity | None = None
    reads_from: ReadWord | None = None
    transducer_depth: ReadQuantity | None = None
    scope: ReadQuantity | None = None
    least_scope: ReadQuantity | None = None
    rode_out: ReadQuantity | None = None
    rode_aboard: ReadQuantity | None = None
    chain: ReadQuantity | None = None
    line: ReadQuantity | None = None
    reserve: ReadQuantity | None = None
    chain_size: ReadQuantity | None = None
    line_size: ReadQuantity | None = None
    chain_grade: ReadWord | None = None
    line_material: ReadWord | None = None
    mark_interval: ReadQuantity | None = None
    marks: ReadLengths | None = None
    marks_from: ReadWord | None = None
    shackle_size: ReadQuantity | None = None
    shackles: ReadWord | None = None
    bitter_end: ReadWord | None = None
    bow_height: ReadQuantity | None = None
    boat_length: ReadQuantity | None = None
    beam: ReadQuantity | None = None
    draught: ReadQuantity | None = None
    boat_form: ReadWord | None = None
    displacement: ReadQuantity | None = None
    engine_power: ReadQuantity | None = None
    propeller_diameter: ReadQuantity | None = None
    antenna_from_bow: ReadQuantity | None = None
    angle: ReadQuantity | None = None
    wind: ReadQuantity | None = None
    current: ReadQuantity | None = None
    drift: ReadQuantity | None = None
    load: ReadQuantity | None = None
    pull: ReadQuantity | None = None
    pull_angle: ReadQuantity | None = None
    spread: ReadQuantity | None = None
    wind_off: ReadQuantity | None = None
    anchor_kind: ReadWord | None = None
    anchor_mass: ReadQuantity | None = None
    bottom: ReadWord | None = None
    spare_anchor: ReadFlag | None = None
    distance: ReadQuantity | None = None
    margin: ReadQuantity | None = None
    other_rode_out: ReadQuantity | None = None
    other_boat_length: ReadQuantity | None = None
    distance_off: ReadQuantity | None = None
    anchor_at: ReadPosition | None = None
    fixes: ReadFixes | None = None
    position_error: ReadQuantity | None = None

class AnchorSizeRead(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True):
    boat_length: ReadQuantity
    load: ReadQuantity
    wind: ReadQuantity | None = None
    beam: ReadQuantity | None = None
    boat_form: ReadWord | None = None
    current: ReadQuantity | None = None
    anchor_kind: ReadWord
    bottom: ReadWord
    scope: ReadQuantity | None = None

class AnchorSizeAnswer(Answer, frozen=True, kw_only=True, omit_defaults=True):
    question: Literal["anchor_size"]
    results: AnchorSize
    read: AnchorSizeRead

class BowAndSternRead(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True):
    slope: ReadQuantity
    boat_length: ReadQuantity
    draught: ReadQuantity
    bow_height: ReadQuantity | None = None
    tide_rise: ReadQuantity | None = None
    tide_fall: ReadQuantity | None = None
    scope: ReadQuantity | None = None
    under_keel: ReadQuantity | None = None
    rode_aboard: ReadQuantity | None = None
    line: ReadQuantity | None = None
    chain: ReadQuantity | None = None

class BowAndSternAnswer(Answer, frozen=True, kw_only=True, omit_defaults=True):
    question: Literal["bow_and_stern"]
    results: BowAndStern
    read: BowAndSternRead

class ChainAndLineRead(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True):
    load: ReadQuantity
    boat_length: ReadQuantity | None = None
    wind: ReadQuantity | None = None
    beam: ReadQuantity | None = None
    boat_form: ReadWord | None = None
    current: ReadQuantity | None = None
    chain_size: ReadQuantity | None = None
    chain_grade: ReadWord | None = None
    line_size: ReadQuantity | None = None
    line_material: ReadWord | None = None
    shackle_size: ReadQuantity | None = None

class ChainAndLineAnswer(Answer, frozen=True, kw_only=True, omit_defaults=True):
    question: Literal["chain_and_line"]
    results: ChainAndLine
    read: ChainAndLineRead

class DeepestAnchorageRead(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True):
    rode_aboard: ReadQuantity
    line: ReadQuantity | None = None
    chain: ReadQuantity | None = None
    bow_height: ReadQuantity | None = None
    tide_rise: ReadQuantity | None = None
    scope: ReadQuantity | None = None
    reserve: ReadQuantity | None = None

class DeepestAnchorageAnswer(Answer, frozen=True, kw_only=True, omit_defaults=True):
    question: Literal["deepest_anchorage"]
    results: DeepestAnchorage
    read: DeepestAnchorageRead

class DragCheckRead(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True):
    anchor_at: ReadPosition
    fixes: ReadFixes
    rode_out: ReadQuantity
    depth: ReadQuantity
    boat_length: ReadQuantity
    bow_height: ReadQuantity | None = None
    tide_fall: ReadQuantity | None = None
    antenna_from_bow: ReadQuantity
    position_error: ReadQuantity | None = None

class DragCheckAnswer(Answer, frozen=True, kw_only=True, omit_defaults=True):
    question: Literal["drag_check"]
    results: DragCheck
    read: DragCheckRead

class HoldingRead(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True):
    anchor_kind: ReadWord
    anchor_mass: ReadQuantity
    bottom: ReadWord
    pull_angle: ReadQuantity
    scope: ReadQuantity | None = None
    load: ReadQuantity | None = None
    wind: ReadQuantity | None = None
    boat_length: ReadQuantity | None = None
    beam: ReadQuantity | None = None
    boat_form: ReadWord | None = None
    current: ReadQuantity | None = None

class HoldingAnswer(Answer, frozen=True, kw_only=True, omit_defaults=True):
    question: Literal["holding"]
    results: Holding
    read: HoldingRead

class LineAngleRead(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True):
    angle: ReadQuantity | None = None
    scope: ReadQuantity | None = None

class LineAngleAnswer(Answer, frozen=True, kw_only=True, omit_defaults=True):
    question: Literal["line_angle"]
    results: LineAngle
    read: LineAngleRead

class MarkPlanRead(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True):
    rode_aboard: ReadQuantity
    line: ReadQuantity | None = None
    mark_interval: ReadQuantity | None = None
    marks: ReadLengths | None = None
    marks_from: ReadWord | None = None
    bow_height: ReadQuantity | None = None
    scope: ReadQuantity | None = None
    chain: ReadQuantity | None = None
    reserve: ReadQuantity | None = None

class MarkPlanAnswer(Answer, frozen=True, kw_only=True, omit_defaults=True):
    question: Literal["mark_plan"]
    results: MarkPlan
    read: MarkPlanRead

class MarkToStopAtRead(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True):
    mark_interval: ReadQuantity | None = None
    marks: ReadLengths | None = None
    rode_out: ReadQuantity
    scope: ReadQuantity | None = None
    chain: ReadQuantity | None = None
    marks_from: ReadWord | None = None
    depth: ReadQuantity | None = None
    bow_height: ReadQuantity | None = None
    tide_rise: ReadQuantity | None = None

class MarkToStopAtAnswer(Answer, frozen=True, kw_only=True, omit_defaults=True):
    question: Literal["mark_to_stop_at"]
    results: MarkToStopAt
    read: MarkToStopAtRead

class PullAtAnchorRead(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True):
    rode_out: ReadQuantity
    depth: ReadQuantity
    load: ReadQuantity
    boat_length: ReadQuantity | None = None
    wind: ReadQuantity | None = None
    beam: ReadQuantity | None = None
    boat_form: ReadWord | None = None
    current: ReadQuantity | None = None
    bow_height: ReadQuantity | None = None
    tide_rise: ReadQuantity | None = None
    chain: ReadQuantity | None = None
    chain_size: ReadQuantity | None = None
    line_size: ReadQuantity | None = None
    line_material: ReadWord | None = None

class PullAtAnchorAnswer(Answer, frozen=True, kw_only=True, omit_defaults=True):
    question: Literal["pull_at_anchor"]
    results: PullAtAnchor
    read: PullAtAnchorRead

class RodeForFlatPullRead(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True):
    depth: ReadQuantity
    load: ReadQuantity
    boat_length: ReadQuantity | None = None
    wind: ReadQuantity | None = None
    beam: ReadQuantity | None = None
    boat_form: ReadWord | None = None
    current: ReadQuantity | None = None
    bow_height: ReadQuantity | None = None
    tide_rise: ReadQuantity | None = None
    chain: ReadQuantity | None = None
    chain_size: ReadQuantity | None = None
    line_size: ReadQuantity | None = None
    line_material: ReadWord | None = None
    scope: ReadQuantity | None = None

class RodeForFlatPullAnswer(Answer, frozen=True, kw_only=True, omit_defaults=True):
    question: Literal["rode_for_flat_pull"]
    results: RodeForFlatPull
    read: RodeForFlatPullRead

class RodeForRoomRead(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True):
    distance: ReadQuantity
    boat_length: ReadQuantity
    depth: ReadQuantity
    bow_height: ReadQuantity | None = None
    tide_rise: ReadQuantity | None = None
    tide_fall: ReadQuantity | None = None
    margin: ReadQuantity | None = None
    scope: ReadQuantity | None = None

class RodeForRoomAnswer(Answer, frozen=True, kw_only=True, omit_defaults=True):
    question: Literal["rode_for_room"]
    results: RodeForRoom
    read: RodeForRoomRead

class RodeToCarryRead(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True):
    depth: ReadQuantity
    bow_height: ReadQuantity | None = None
    tide_rise: ReadQuantity | None = None
    scope: ReadQuantity | None = None
    reserve: ReadQuantity | None = None

class RodeToCarryAnswer(Answer, frozen=True, kw_only=True, omit_defaults=True):
    question: Literal["rode_to_carry"]
    results: RodeToCarry
    read: RodeToCarryRead

class RodeToLetOutRead(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True):
    depth: ReadQuantity
    bow_height: ReadQuantity | None = None
    tide_rise: ReadQuantity | None = None
    scope: ReadQuantity | None = None
    chain: ReadQuantity | None = None
    rode_aboard: ReadQuantity | None = None
    line: ReadQuantity | None = None
    reserve: ReadQuantity | None = None
    mark_interval: ReadQuantity | None = None
    marks: ReadLengths | None = None
    marks_from: ReadWord | None = None

class RodeToLetOutAnswer(Answer, frozen=True, kw_only=True, omit_defaults=True):
    question: Literal["rode_to_let_out"]
    results: RodeToLetOut
    read: RodeToLetOutRead

class ScopeNowRead(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True):
    rode_out: ReadQuantity
    depth: ReadQuantity
    bow_height: ReadQuantity | None = None
    tide_rise: ReadQuantity | None = None

class ScopeNowAnswer(Answer, frozen=True, kw_only=True, omit_defaults=True):
    question: Literal["scope_now"]
    results: ScopeNow
    read: ScopeNowRead

class SettingPullRead(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True):
    boat_length: ReadQuantity
    pull: ReadQuantity
    engine_power: ReadQuantity | None = None
    propeller_diameter: ReadQuantity | None = None
    beam: ReadQuantity | None = None
    boat_form: ReadWord | None = None

class SettingPullAnswer(Answer, frozen=True, kw_only=True, omit_defaults=True):
    question: Literal["setting_pull"]
    results: SettingPull
    read: SettingPullRead

class ShallowestAnchorageRead(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True):
    draught: ReadQuantity
    under_keel: ReadQuantity | None = None
    tide_fall: ReadQuantity | None = None
    depth: ReadQuantity | None = None

class ShallowestAnchorageAnswer(Answer, frozen=True, kw_only=True, omit_defaults=True):
    question: Literal["shallowest_anchorage"]
    results: ShallowestAnchorage
    read: ShallowestAnchorageRead

class SwingClearanceRead(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True):
    rode_out: ReadQuantity
    depth: ReadQuantity
    boat_length: ReadQuantity
    distance: ReadQuantity
    bow_height: ReadQuantity | None = None
    tide_fall: ReadQuantity | None = None
    margin: ReadQuantity | None = None
    other_rode_out: ReadQuantity | None = None
    other_boat_length: ReadQuantity | None = None

class SwingClearanceAnswer(Answer, frozen=True, kw_only=True, omit_defaults=True):
    question: Literal["swing_clearance"]
    results: SwingClearance
    read: SwingClearanceRead

class SwingRadiusRead(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True):
    rode_out: ReadQuantity
    depth: ReadQuantity
    boat_length: ReadQuantity
    bow_height: ReadQuantity | None = None
    tide_fall: ReadQuantity | None = None

class SwingRadiusAnswer(Answer, frozen=True, kw_only=True, omit_defaults=True):
    question: Literal["swing_radius"]
    results: SwingRadius
    read: SwingRadiusRead

class TackleCheckRead(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True):
    boat_length: ReadQuantity
    depth: ReadQuantity | None = None
    bow_height: ReadQuantity | None = None
    scope: ReadQuantity | None = None
    anchor_kind: ReadWord | None = None
    anchor_mass: ReadQuantity | None = None
    bottom: ReadWord | None = None
    wind: ReadQuantity | None = None
    beam: ReadQuantity | None = None
    boat_form: ReadWord | None = None
    current: ReadQuantity | None = None
    chain: ReadQuantity | None = None
    chain_size: ReadQuantity | None = None
    chain_grade: ReadWord | None = None
    line: ReadQuantity | None = None
    line_size: ReadQuantity | None = None
    line_material: ReadWord | None = None
    rode_aboard: ReadQuantity | None = None
    shackle_size: ReadQuantity | None = None
    bitter_end: ReadWord | None = None
    shackles: ReadWord | None = None
    spare_anchor: ReadFlag | None = None

class TackleCheckAnswer(Answer, frozen=True, kw_only=True, omit_defaults=True):
    question: Literal["tackle_check"]
    results: TackleCheck
    read: TackleCheckRead

class TideAtRead(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True):
    low_height: ReadQuantity
    low_at: ReadClock
    high_height: ReadQuantity
    high_at: ReadClock
    at: ReadClock

class TideAtAnswer(Answer, frozen=True, kw_only=True, omit_defaults=True):
    question: Literal["tide_at"]
    results: TideAt
    read: TideAtRead

class TimeToLetGoRead(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True):
    depth: ReadQuantity
    distance_off: ReadQuantity
    drift: ReadQuantity
    boat_length: ReadQuantity
    rode_aboard: ReadQuantity
    line: ReadQuantity | None = None
    chain: ReadQuantity | None = None
    bow_height: ReadQuantity | None = None
    reserve: ReadQuantity | None = None
    scope: ReadQuantity | None = None

class TimeToLetGoAnswer(Answer, frozen=True, kw_only=True, omit_defaults=True):
    question: Literal["time_to_let_go"]
    results: TimeToLetGo
    read: TimeToLetGoRead

class TrueDepthRead(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True):
    reading: ReadQuantity
    reads_from: ReadWord
    transducer_depth: ReadQuantity | None = None
    draught: ReadQuantity | None = None

class TrueDepthAnswer(Answer, frozen=True, kw_only=True, omit_defaults=True):
    question: Literal["true_depth"]
    results: TrueDepth
    read: TrueDepthRead

class TwoAnchorLoadRead(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True):
    load: ReadQuantity
    boat_length: ReadQuantity | None = None
    wind: ReadQuantity | None = None
    beam: ReadQuantity | None = None
    boat_form: ReadWord | None = None
    current: ReadQuantity | None = None
    spread: ReadQuantity
    wind_off: ReadQuantity | None = None

class TwoAnchorLoadAnswer(Answer, frozen=True, kw_only=True, omit_defaults=True):
    question: Literal["two_anchor_load"]
    results: TwoAnchorLoad
    read: TwoAnchorLoadRead

class WeighAnchorRead(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True):
    depth: ReadQuantity
    anchor_mass: ReadQuantity
    chain: ReadQuantity | None = None
    chain_size: ReadQuantity | None = None
    bow_height: ReadQuantity | None = None
    line_size: ReadQuantity | None = None
    boat_length: ReadQuantity | None = None
    wind: ReadQuantity | None = None
    current: ReadQuantity | None = None
    beam: ReadQuantity | None = None
    boat_form: ReadWord | None = None

class WeighAnchorAnswer(Answer, frozen=True, kw_only=True, omit_defaults=True):
    question: Literal["weigh_anchor"]
    results: WeighAnchor
    read: WeighAnchorRead

class WhenToVeerRead(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True):
    rode_out: ReadQuantity
    depth: ReadQuantity
    bow_height: ReadQuantity | None = None
    least_scope: ReadQuantity | None = None
    low_height: ReadQuantity
    low_at: ReadClock
    high_height: ReadQuantity
    high_at: ReadClock
    at: ReadClock

class WhenToVeerAnswer(Answer, frozen=True, kw_only=True, omit_defaults=True):
    question: Literal["when_to_veer"]
    results: WhenToVeer
    read: WhenToVeerRead

class WhereToDropRead(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True):
    rode_out: ReadQuantity
    tide_rise: ReadQuantity | None = None
    scope: ReadQuantity | None = None
    depth: ReadQuantity
    bow_height: ReadQuantity | None = None
    boat_length: ReadQuantity | None = None

class WhereToDropAnswer(Answer, frozen=True, kw_only=True, omit_defaults=True):
    question: Literal["where_to_drop"]
    results: WhereToDrop
    read: WhereToDropRead

class WindLoadRead(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True):
    boat_length: ReadQuantity
    wind: ReadQuantity
    beam: ReadQuantity | None = None
    boat_form: ReadWord | None = None
    draught: ReadQuantity | None = None
    current: ReadQuantity | None = None

class WindLoadAnswer(Answer, frozen=True, kw_only=True, omit_defaults=True):
    question: Literal["wind_load"]
    results: WindLoad
    read: WindLoadRead
