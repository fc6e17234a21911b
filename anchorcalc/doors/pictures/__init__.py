"""Pictures of answers: which question has one, and where it is drawn. Declared here once, for every door."""

PICTURES: dict[str, str] = {
    "rode_to_let_out": "side",
    "scope_now": "side",
    "deepest_anchorage": "side",
    "rode_to_carry": "side",
    "where_to_drop": "side",
    "line_angle": "side",
    "swing_radius": "plan",
    "swing_clearance": "plan",
    "rode_for_room": "plan",
    "time_to_let_go": "plan",
    "tide_at": "tide",
    "when_to_veer": "tide",
    "drag_check": "track",
    "mark_to_stop_at": "strip",
    "mark_plan": "strip",
    "bow_and_stern": "beach",
    "two_anchor_load": "forces",
    "true_depth": "hull",
    "shallowest_anchorage": "hull",
}
