"""How people ask each question: patterns with a weight, by question.

In a pattern `..` is up to four words, `...` up to ten, `(a|b)` one of several, `[a]` one that may be missing, and a word in capitals one of
the lists below. A sentence may hold several patterns of a question; their weights add up, and the heaviest question is the one asked.
"""

WORDS: dict[str, str] = {
  "ROPE": "(rode|chain|line|rope|cable|warp|anchorline|ropes|scope|length)",
  "ONLYROPE": "(rode|chain|line|rope|cable|warp|anchorline|ropes)",
  "OUT": "(let out|put out|pay out|veer|veered|out|give|ease|let go|lay out|run out|stream|letting out|use|deploy|set|streamed|let her|leave out|drop|go out)",
  "UNITS": "(feet|metres|fathoms|ft|m|shackles|yards)",
  "BE": "(is|are|am|be|was|were|will)",
  "MUST": "(do|should|shall|must|can|need|would|could|to|will|may|ought)",
  "ME": "(i|we|you|she|me|us|one|he|they|it)",
  "ANCHOR": "(anchor|hook|plough|claw|scoop|fisherman|grapnel|mushroom|fluke|bower|pick)",
  "HAZARD": "(rocks|rock|shore|pier|buoy|jetty|quay|moorings|mooring|neighbour|neighbours|boat|reef|ledge|shoal|island|pontoon|dock|wall|cliff|wreck|beach|skerry|farm|boom|perch|lobster pots|pots|fairway|channel|cable|sandbank|bank|post|slip)",
  "FLAT": "(flat|flatter|horizontal|horizontally|level|flatly|along the bottom|along the ground|uplift|upward|upwards|zero degrees)",
}

ASKED: dict[str, tuple[str, ...]] = {
  "rode_to_let_out": (
    "6 how much ROPE", "3 how much ROPE .. OUT", "6 how many UNITS .. OUT", "6 how much .. MUST .. OUT", "5 how long a rode", "5 what length of ROPE", "5 what ROPE ME", "4 rode ?", "4 ROPE for # ?",
    "4 rode for <ratio>", "5 what MUST ME (veer|let out|put out|pay out)", "4 rode to (let out|put out|veer)", "4 what length ROPE", "5 how much MUST ME (veer|let out|put out|pay out|drop)", "5 how much to (veer|let out|put out|pay out)",
    "5 how much (anchor|of the|of my) ROPE", "4 ROPE (wanted|needed|required)", "4 (rode|cable|chain|warp|line) out ?", "4 how many UNITS of ROPE", "3 how many (shackles|fathoms|metres|feet)", "4 amount of ROPE", "4 what scope of ROPE",
    "4 what length MUST ME", "4 length of ROPE (to|for)", "5 how much MUST ME .. out", "4 how much goes out", "4 (veer|let out) how much", "4 rode please", "4 how much in # ?", "4 ROPE length", "4 length to (veer|let out|put out)",
    "3 how far MUST ME (veer|pay out|let out)", "4 how much for <ratio>", "4 what rode", "4 what ROPE .. for <ratio>", "4 how much <ratio>", "3 how much out", "4 what cable", "4 which mark and",
  ),
  "mark_to_stop_at": (
    "9 (which|what) (mark|marker|tag|knot|ribbon|colour|paint mark|leather)", "9 at (which|what) (mark|marker|tag|knot|ribbon)", "8 how many (marks|tags|knots|ribbons|markers)", "7 mark (to stop|do i stop|number)", "6 (stop|stopping) .. (mark|marker|tag|knot)",
    "8 (mark|marker|tag|knot) ME (stop|stopping)", "6 count .. (marks|knots|tags)", "7 (where|when) .. stop .. (mark|marks|markers)", "6 what number .. (mark|roller)", "7 where .. (stop|snub) .. (marks|marked)", "6 (marks|knots|tags|markers) MUST .. (go|run|pass|count|let)", "5 how far past",
  ),
  "deepest_anchorage": (
    "9 how deep [of] [a] (can|could|may|do|is|water|should|might|would|dare|spot|of)", "8 (deepest|greatest depth|deepest water|maximum depth|max depth)", "7 what depth .. (too deep|limit|go to|rode|allow|anchor|serve)", "8 how deep", "7 depth limit", "7 what [is] [the] most water", "6 too deep for", "6 what depth can", "7 deep can",
    "6 max water", "6 (how much|what) water (can|may|could) .. (anchor|lie|use|take)", "6 limit .. depth", "6 depth .. (can|could) ME (anchor|stop|lie|go)", "6 anchor in at most", "5 most depth",
  ),
  "scope_now": (
    "9 (what|which) [is] [my|our|the] scope", "7 what scope", "8 scope (do|am|have|is|are|was)", "7 (scope|rode|that|this|it|that much) .. enough", "6 is .. (enough|okay|sufficient|adequate) .. (scope|rode|out)", "6 scope ?", "7 scope right now", "7 scope .. (now|at high water)", "6 how many times the depth", "6 enough ROPE [out]", "6 enough scope", "6 (what|which) ratio",
    "5 MUST ME .. enough out", "6 (long|short) enough", "5 (okay|enough|fine|right) (with|for) # of", "5 ratio (am|are|is)", "5 scope <length>", "7 scope (that|this) gives", "5 what .. ratio", "5 is that enough", "5 is this enough", "4 enough ?", "5 enough out", "4 too little out", "4 too short", "5 what .. scope", "4 scope .. ?", "5 scope check",
  ),
  "swing_radius": (
    "9 swing radius", "9 (swinging|swing) (circle|room|radius|diameter)", "8 how far (will|do|does|can|could|would|might|should) .. swing", "8 how (big|wide|large) .. (circle|swing)", "6 how far .. swing", "7 circle .. (big|wide|radius|size)", "7 radius", "6 how much (room|space) .. (swing|swinging)", "6 swing ?", "5 (what|how) .. (swinging|circle)", "6 size of .. circle", "6 area .. swing", "6 how far .. stern (swing|come|reach|sweep|swings)",
    "5 sweep", "5 how much [sea] room .. (need|take)", "5 how far out .. (stern|swing)",
  ),
  "swing_clearance": (
    "8 swing clear", "8 (clear|miss|hit|touch|reach|foul|strike|swing into|bump|swing onto|collide) .. HAZARD", "7 (too close|room enough|enough room|swinging room|far enough|close to)", "6 (okay|safe|clear) to stay", "6 will .. (touch|hit|clear|foul|bump|miss|collide)", "6 how (close|near) .. (come|swing|get)", "6 stay clear", "6 are we clear", "6 am i clear", "6 do we clear", "7 clearance (to|from|off|?)", "5 clear of", "6 what .. clearance", "6 swing into", "6 how much .. (clearance|to spare|left)",
    "5 (enough|sufficient) (room|space|distance|clearance|berth)", "5 (okay|fine|safe|good) (here|there|where|to)", "5 will we [be] clear", "4 clear ?", "4 okay ?", "4 (hit|touch|clear) (him|her|them|it|each other|one another)", "6 swing .. (against|hit|touch|into)", "5 room to swing", "5 fall foul",
  ),
  "rode_for_room": (
    "9 longest rode", "8 (most|longest|maximum|max|more) [rode|chain|cable|line|length] [ROPE] ME (can|could|may|dare|should)", "8 (most|longest|maximum|max) .. (veer|let out|put out|pay out)", "7 how much ROPE (can|may|could|dare) ME", "7 how much (can|may|could|dare) ME (veer|let out|put out|pay out)", "6 (room|space) for", "7 rode .. (room|space|fit|fits)", "6 fits", "6 fit in", "6 (can|could|may) ME (veer|let out|put out|have) .. (without|and still|before)", "6 without .. (hitting|touching|swinging|reaching|fouling)",
    "7 how much ROPE .. without", "5 is there room", "5 room enough", "6 longest", "6 room .. how much", "5 most ROPE", "6 (rode|scope) .. limited", "5 most ME can", "5 how much .. (stay|keep|remain) clear", "5 at most", "5 tight",
  ),
  "true_depth": (
    "9 how deep .. (really|actually|in truth|truly)", "9 (true|real|actual) depth", "8 (how deep|depth) is [it|that|the water] really", "7 how deep is (it|the water|that)", "7 how much water (is|have|do)", "6 really", "7 what .. depth .. (really|actually|true)", "6 what depth (is|does|of) .. (that|it|mean|there|really|water)", "6 depth (from|of) the surface", "6 (what|how much) .. water .. (there|really|under)", "6 surface to", "5 so how deep", "5 what is the depth", "6 how deep .. (in fact|is that)", "5 depth of water", "5 water depth ?",
    "6 depth below the (surface|waterline)", "5 what depth", "4 depth ?", "6 how deep are we", "5 deep is it",
  ),
  "shallowest_anchorage": (
    "9 (shallowest|least depth|minimum depth|least water|min depth|shallowest water|shoalest)", "8 how shallow", "8 (aground|touch bottom|ground at|dry out|take the ground|float)", "7 (touch|ground|dry|hit the bottom|sit on the bottom) .. low", "6 how close in", "6 (enough|sufficient) water", "6 (keel|water) .. low (water|tide)", "6 too shallow", "6 how little water", "6 shoal", "6 how much .. under (the keel|us|her|me)", "6 stay afloat", "6 will (i|we|she) (touch|ground|float|be aground|hit|dry|sit)", "5 under .. keel", "6 least .. water", "5 what depth .. (need|least|must|want|look)", "5 minimum (water|depth)",
    "6 (still|remain|be) afloat", "5 need .. under", "5 touch",
  ),
  "where_to_drop": (
    "9 where .. (drop|let go|put the anchor|lay the anchor|let .. go)", "8 how far (ahead|upwind|to windward|up wind|forward|beyond|past|in front)", "7 (drop|let go) .. (ahead|upwind|windward)", "7 ahead of .. spot", "6 where (do|should|must|shall|to) .. (drop|let go|anchor)", "6 how far .. (upwind|ahead|windward|beyond|past) .. (drop|let go|anchor)", "6 how far .. (drop|let go)", "6 when do i drop", "5 lie .. (spot|place|here) .. drop", "5 end up .. (spot|there|here)", "6 how far .. to (drop|let go)", "5 stern .. lie", "6 (upwind|windward) .. (drop|let go)", "5 bow .. (lie|end up|come to)", "5 to drop",
  ),
  "time_to_let_go": (
    "9 (time left|time to let go|how long before|how long have|how long can|how long until|how long till|how many minutes|how much time)", "8 (engine|motor) .. (died|failed|dead|stopped|quit|packed up|gone|out|conked|broken|fails|dies|kaput|wont start|given up|stalled|packs)", "7 let go now", "7 (when|must|should|do) .. let go", "6 drifting", "6 when .. (drop|anchor|let go)", "5 when must", "6 (lost|no) (engine|power|propulsion|steerage)", "5 drop .. now", "5 (prop|propeller) .. (fouled|rope|wrapped|line)", "6 minutes .. (have|left|till|until|before)", "6 drop (it|anchor|the anchor|the hook) (now|yet)", "5 out of fuel", "5 wait", "4 how long", "5 latest",
  ),
  "tide_at": (
    "9 height of tide at", "9 (how high|what height|height of the tide|height of tide|tide height|how much tide|what is the tide|tidal height) .. #", "8 (tide|water) .. at <clock>", "7 how high .. tide", "7 (what|how much) .. (tide|rise|water) .. at", "6 tide at", "6 height at", "6 how much .. (rise|fall|come|rising|falling|to come|left)", "6 rule of twelfths", "6 twelfths", "6 height .. at", "6 tide .. at", "6 what .. height", "5 how much (more|further|higher|lower)", "6 (rise|fall) .. (still|left|to come|remaining)", "5 still (to come|rising|falling)", "5 how high", "5 tide .. <clock>",
  ),
  "when_to_veer": (
    "9 when .. veer", "9 (when|what time|by when|how late|how long|what hour) .. (more|let out|pay out|ease|veer|slack away|go short|give|longer)", "8 veer [by] when", "7 when .. (let out|pay out|more rope|more rode|more chain|more line|veer|slack)", "8 (let|pay|ease|put|give) .. (more|extra) .. (later|when|time)", "7 veer .. (later|at all|tonight|again|more)", "6 latest to veer", "7 (need|needs) (more|to veer)", "6 go short", "6 alarm", "6 when .. more", "7 veer by", "6 to veer", "5 when must", "6 more rope", "5 more (chain|rode|line|cable)",
  ),
  "line_angle": (
    "9 what angle .. (scope|<ratio>|rode|line|chain|cable|horizontal|bow|rope|warp|taut|make|be)", "8 angle .. (of|for|at) <ratio>", "9 scope .. angle", "8 angle .. scope", "8 what scope .. (degrees|<angle>|that)", "7 what scope .. <angle>", "6 angle of the (rode|line|chain|rope|cable|warp)", "6 <angle> .. scope", "6 angle ?", "5 (what|which) angle", "6 <ratio> .. angle", "5 how steep", "6 how (flat|steep) .. (line|rode|rope|lead)", "5 scope <angle>", "4 scope",
  ),
  "wind_load": (
    "8 (what|which|how much|how great|how strong|how hard|how big|how many) .. (load|pull|strain|force|tension|drag|tug|pulls|windage|stress)", "6 (load|pull|strain|force|tension|windage) ?", "6 wind load", "6 rode load", "6 load on the (rode|anchor|cleat|snubber|bow|chain|rope|line|cable|bridle|windlass)", "6 (force|pull|strain|load) on (the|my|our) (anchor|rode|cleat|snubber|bow|chain|rope|line|cable|mooring)", "6 how (many|much) .. (pounds|kilos|kg|newtons|kn|dan)", "6 what (pull|load|strain|force)", "6 how hard .. (pull|pulls|hang|drag)", "5 (pounds|kilos) .. (on the|of pull|will be)", "5 pull at", "5 load at", "5 what does she (pull|hang)", "5 anchor load", "5 rode tension", "4 load", "4 pull .. ?", "5 put on .. (cable|rode|chain|anchor)", "5 strain comes", "5 how much .. pull", "5 tug on", "5 wind .. pull",
  ),
  "pull_at_anchor": (
    "9 (angle|lead) .. (at|on|down at|of pull at) .. (anchor|shank|ring)", "9 (pull|shank|rode) angle", "9 angle .. (anchor|shank|hook|ring)", "8 (is|are|does|am|will) .. (pull|pulled|pulling|grow|lift|lifting|lifts|shank) .. (flat|up|upward|upwards|level|along|horizontal|sideways|bottom|anchor|ring|off)", "8 how much .. (lying|lies|stays|lie|stay|rests|resting|left) .. (seabed|bottom|ground|down)", "8 chain (lifting|lift|lying|lies|lifts|stay|stays|still)", "7 flat pull at the anchor", "7 how (flat|does) .. pull", "6 upward (pull|angle)", "6 pull at the anchor", "7 how far (astern|behind|downwind|back) .. (anchor|bow)", "7 pulled (up|upward|upwards|flat|level)", "6 pull on the anchor", "6 (lift|lifts|lifting) .. (anchor|shank|bottom)", "6 pulling up", "6 shank", "6 lead of the cable", "6 angle at", "6 (flat|up) ?", "5 tension at the bow", "6 stays on the (ground|bottom|seabed)", "6 does (it|the) .. (lift|pull)",
  ),
  "rode_for_flat_pull": (
    "10 (how much|what|how long|how many|rode|length|need|needed|minimum) ... (flat|horizontal|level|uplift|lift|lifted|flat lead|zero lift|zero degrees|grows along|along the bottom|along the ground)", "9 FLAT ... (how much|what length|rode ?|rode|how many|how long|what must|what do|let out|veer|put out)", "8 (rode|rope|line|chain|length|cable) .. (for|to|needed) .. (flat|horizontal|level|zero)", "8 (no|zero) (uplift|lift|upward)", "7 (flat|horizontal|level) (pull|lead)", "7 (until|till|before|so that|so) .. (flat|horizontal|level|shank)", "6 shank .. (flat|horizontal|down|bottom)", "6 (stay|stays) on the bottom", "6 last bit of chain",
  ),
  "holding": (
    "8 (hold|holds|holding|hold ?)", "8 holding power", "8 (what|how much|how hard|which|will|does|would|can) .. (hold|holding|stand|withstand|break out|take|drag|good)", "7 (at|in) (what|how much) wind .. drag", "8 (drag|dragging|drags) (at|in) (what|how much) .. wind", "7 drag or", "7 will i drag", "6 what wind .. (stand|drag|hold|take)", "6 break out", "6 (enough|any good) for", "6 lets go", "5 let go", "6 what will .. stand", "7 wind .. drag", "6 keep hold", "5 drag", "5 margin", "6 holding .. ?",
  ),
  "setting_pull": (
    "9 (pull|pulls|thrust|strain|reverse|reversing|back|backing|astern) ... (engine|<power>|prop|propeller|astern|reverse|wind|breeze|gust)", "9 what (wind|breeze|gust) .. (equal|worth|like|test|tested|proved|prove|same|equivalent|simulate|set|stand for|pull|that|is that|good for|fake|it)", "8 (wind|gust|breeze) equivalent", "8 equivalent (wind|breeze|gust)", "8 (set|setting|sets) (the|my|an) (anchor|hook)", "7 (astern|reverse|backing down|back down|reversing)", "7 setting pull", "7 how (strong|big|much) a (breeze|wind|gust|blow)", "7 (test|tested|proved|prove|simulate|fake) .. (anchor|wind|set|breeze|gust)", "6 bollard pull", "6 comparable wind", "6 pull .. astern", "6 (what|which) wind", "6 how hard .. (set|pull|astern)", "5 set .. anchor", "5 (load cell|spring balance|dynamometer|fish scale)", "5 prove", "6 <power> .. (pull|set|anchor)",
  ),
  "drag_check": (
    "9 (dragging|drag ?|drags|dragged|drag)", "8 (anchor|she|boat|we|it) .. (moved|moving|shifted|holding|moving off|shift|still where)", "8 has (she|it|the anchor) (shifted|moved)", "8 drag check", "7 still where", "6 <position> .. <position>", "7 (moving|moved) (off|away)", "6 check .. drift", "6 just swinging", "6 (hold|holding) or drag", "6 swinging or dragging", "3 <position>",
  ),
  "two_anchor_load": (
    "9 (two|both|each|2|<number>) (anchors|rodes|hooks|cables|bowers)", "8 (load|strain|share|pull|force|tension|carry|carries|get|take) .. each", "8 each .. (carry|take|get|load|rode|anchor|share|cable|rope|of them)", "8 on each", "7 (share|shared|split|splitting|divide|divided)", "8 per (rode|anchor|cable|line)", "7 each", "7 (go|goes|going) slack", "6 between (the|them|two)", "6 load each", "6 <angle> between", "6 <angle> apart", "7 both anchors", "6 vee", "6 (kedge and bower|bower and kedge)", "6 two anchors", "6 hammerlock", "6 each one", "5 lee anchor", "5 spread",
  ),
  "bow_and_stern": (
    "9 stern (to|in|on|ashore|towards|first|to the|anchor on|tied|line) .. (beach|shore|sand|strand|tree)", "8 bow and stern", "8 (backing|back|back up) (onto|to|up) .. (beach|sand|shore)", "7 (bow anchor|bower|front anchor) .. (how far|where|go|distance|drop|out)", "7 (how far|where) ... (bow anchor|bower|front anchor|anchor go down)", "7 stern (to|in|ashore)", "6 beach", "6 stern sit", "6 line ashore", "6 too steep", "6 nosing stern", "6 bow rode", "5 <ratio> beach", "6 beach mooring", "6 shelving shore", "6 stern on", "5 anchor distance",
  ),
  "weigh_anchor": (
    "9 (by hand|windlass|winch|gypsy|capstan)", "8 (weigh|weighing|raise|raising|hoist|hoisting|lift|lifting|haul|hauling|heave|pull up|pull the anchor up|pull my anchor up|get .. up|getting .. up|retrieve|bring .. up)", "8 (how heavy|what weight|how many kilos|hanging load|hanging weight|what load) .. (up|weigh|hang|lift|raise|breaks out|leaves|bottom|a trip|roller|feel)", "7 hauling load", "7 hanging", "6 break out", "6 (breaks out|leaves the bottom|off the bottom|clear of the bottom|a trip)", "6 windlass pull", "6 can (i|we|she|one man|two of us|a man|my wife) .. (lift|haul|pull|get|raise|heave|weigh)", "6 weight of chain and anchor", "6 how heavy", "6 hangs", "5 manageable", "6 lift it", "6 get it up", "6 too heavy", "6 pull .. up",
  ),
  "anchor_size": (
    "9 (what|which|how) (size|big|heavy|large|weight) .. (ANCHOR|anchor|hook)", "9 how (heavy|big|large) .. (ANCHOR|should|be)", "8 (what|which) (weight|mass|size) .. ANCHOR", "8 (weight|mass|size) of [an|a|the] ANCHOR", "8 anchor (size|weight|mass|how heavy)", "7 what ANCHOR .. for", "7 which ANCHOR", "7 what (anchor|plough|claw|scoop|grapnel|fluke|fisherman|mushroom)", "7 how many (kg|kilos|pounds|kilograms) .. (ANCHOR|for|?)", "7 (smallest|right|choose|recommend|new|storm|buying) .. ANCHOR", "6 anchor for", "6 what (weight|size|mass)", "6 which (mass|weight|size)", "6 how (heavy|big|large)", "5 (ANCHOR) for a", "6 right (size|anchor|weight)", "5 ANCHOR mass", "6 (what|which) .. size is right", "5 how many kg",
  ),
  "chain_and_line": (
    "9 strong enough", "9 (what|which|how) (size|thick|diameter|strong|gauge) .. (chain|line|rope|nylon|warp|rode|shackle|cable)", "9 (weakest|weak link|weak point|weaker|weakest link|breaks first|goes first|parts first|snap|go first|fails first|break first|what breaks|what goes|will break)", "8 (chain|rope|line|nylon|warp|gear|shackle|rode|cable) .. (enough|hold|do ?|stand|take the strain|up to|okay|do)", "8 (working load|rated strength|safe load|swl|wll)", "8 how thick", "8 (chain|line|rope) size", "7 size (chain|rope|line|nylon|warp|shackle)", "7 will it snap", "7 (take|stand|hold|withstand) .. (strain|load)", "7 which (part|goes|is weaker|breaks|fails)", "6 (is|will|would|does|do) .. (chain|rope|line|nylon|shackle|warp) .. (strong|enough|okay|do|hold|stand|take|up)", "6 size of (chain|rope|line)", "6 diameter", "6 does it do", "5 strong", "6 too (thin|weak|light)", "6 what .. first", "5 heavy enough chain", "6 what chain",
  ),
  "rode_to_carry": (
    "9 (what|how) .. (carry|buy|own|have aboard|have on board|stow|keep aboard|purchase|order)", "8 how (much|long) .. ROPE .. (carry|buy|need for my boat|have|aboard|on board|own|order|get|purchase|stow)", "8 (buy|buying|carry|shopping|purchase|order|ordering|outfit|fitting out|kit out|stock|new rode|chandler)", "7 how long .. (anchor line|rode|rope|line|warp|chain|cable) .. be", "7 (rode|rope|line|chain) to (carry|buy|have)", "6 need aboard", "6 total length", "6 how much ROPE .. (boat|deepest|aboard|locker)", "6 what length", "6 have aboard", "6 to carry", "6 how long a (rode|rope|line|warp|chain|cable)", "6 length of rode .. (aboard|carry|buy)", "5 deepest",
  ),
  "mark_plan": (
    "9 (each|every|per|which) (mark|marker|ribbon|tag|colour|knot|paint mark|of my marks|of them|fathom)", "9 mark (plan|by mark|table)", "9 (depth|depths|water|deep) .. (each|every|per|mark)", "8 (table|list|card) .. (depth|depths|mark|marks|marker|deep|deepest)", "7 (each|every) .. (worth|good|serve|stand|deep|depth|do|meant)", "7 which mark", "7 mark .. good for", "7 depth table", "6 (what|which) depth .. mark", "6 at each mark", "6 for each", "6 marks .. depth", "6 mark .. deep", "5 table",
  ),
  "tackle_check": (
    "9 (check|survey|vet|inspect|review|rate|look over|go over|go through|pass|once over|assess|judge|audit|critique) .. (tackle|gear|outfit|set up|setup|kit|equipment|stuff|this|rig)", "9 (tackle|gear) check", "9 (ground tackle|anchor gear|anchoring equipment|anchor stuff|anchoring gear|ground gear|anchor kit|anchoring kit|anchor setup|tackle|gear|outfit|set up|setup|equipment)", "7 (wrong|missing|fix|faults|change|mend|improve|in order|all right|pass muster|good enough|proper|safe|bad|suitable|shipshape) .. (tackle|gear|outfit|set up|setup|equipment|stuff)", "7 (tackle|gear|outfit|setup|equipment) .. (wrong|missing|fix|faults|change|in order|right|good|okay|proper|safe|muster)", "6 bitter end", "6 what would you change", "6 look over this", "5 please vet", "5 faults", "6 what is wrong",
  ),
}
