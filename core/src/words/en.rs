//! English. Sorted by key; `{0}` stands for a value put in.

pub(super) const WORDS: &[(&str, &str)] = &[
    ("allowed.any", "any value"),
    ("allowed.between", "{0} to {1}"),
    ("allowed.inside", "more than {0} and less than {1}"),
    ("allowed.less_lift", "less lift or less grade"),
    ("allowed.less_speed", "a lower speed or less lift area"),
    ("allowed.level", "0 (level ground)"),
    ("allowed.nearer_one", "a value nearer to 1"),
    (
        "allowed.nearer_other_side",
        "a value nearer to that of the other side",
    ),
    ("allowed.no_question", "no question"),
    (
        "allowed.other_question",
        "another question or other values of the scenario",
    ),
    (
        "allowed.own_cycle",
        "a file of the cycle (idle_drag.trace), whose lines hold time in s and speed in km/h; or another cycle",
    ),
    (
        "allowed.ratio",
        "a number such as 0.5, or a percentage such as 50 %",
    ),
    (
        "allowed.seed",
        "the name of a question, then a whole number as its seed",
    ),
    ("allowed.some_speed", "a speed above 0"),
    (
        "allowed.trace",
        "lines of two numbers, time in s and speed in km/h, such as 0,0 and then 1,3.5",
    ),
    (
        "caution.choice",
        "A recommendation from few numbers is a beginning, not a decision. What these motors can do belongs on closed ground with no bystanders; local law and the vehicle maker's instructions come first. For teaching and early comparison; it replaces no licensed engineering practice.",
    ),
    (
        "caution.cornering",
        "Cornering at the limit belongs on closed ground with no bystanders: a car slides or swings round without warning. Local law and the vehicle maker's instructions come first. For teaching and early comparison; it replaces no licensed engineering practice.",
    ),
    (
        "caution.idle_drag",
        "Losses and ranges are computed from invented coefficients, not measured. The efficiency classes IE1 to IE4 are for motors on the mains and say nothing about a traction motor. For teaching and early comparison; it replaces no licensed engineering practice.",
    ),
    (
        "caution.launch",
        "Hard launches belong on closed ground with no bystanders: a car can leave its path at once. Local law and the vehicle maker's instructions come first. For teaching and early comparison; it replaces no licensed engineering practice.",
    ),
    (
        "caution.load_transfer",
        "Hard acceleration belongs on closed ground with no bystanders. Local law and the vehicle maker's instructions come first. For teaching and early comparison; it replaces no licensed engineering practice.",
    ),
    (
        "caution.motor_split",
        "What these motors can do belongs on closed ground with no bystanders. Local law and the vehicle maker's instructions come first. For teaching and early comparison; it replaces no licensed engineering practice.",
    ),
    (
        "caution.packaging",
        "Room in a plan view is no design: crash structure, cooling, cables and service access need room too. For teaching and early comparison; it replaces no licensed engineering practice.",
    ),
    (
        "caution.traction",
        "At the traction limit a car can leave its path. Closed ground only, no bystanders. Local law and the vehicle maker's instructions come first. For teaching and early comparison; it replaces no licensed engineering practice.",
    ),
    (
        "caution.turn_in_place",
        "Closed, level ground only, no bystanders. It tears tyres and ground and drifts on slopes. Local law and the vehicle maker's instructions come first. For teaching and early comparison; it replaces no licensed engineering practice.",
    ),
    ("check.derived", "derived"),
    ("check.memory", "from memory"),
    ("check.practice", "common practice, no source"),
    ("check.quoted", "quoted"),
    ("check.read", "read"),
    (
        "choice.because_best",
        "{0} meets the brief with the highest score, {1}, at a cost of {2} and with {3} to 60 mph. Next is {4} with {5}; most of the difference is {6}.",
    ),
    (
        "choice.because_cannot_start",
        "{0}: {1} would score higher, but on the grade of {2} its tyres and motors are short of {3}. {0} has {4} to spare.",
    ),
    (
        "choice.because_fit",
        "{0}: {1} would score higher, but its drive units lack {2} of room. Those of {0} have {3} to spare.",
    ),
    (
        "choice.because_none",
        "No layout meets the brief. {0} would be best without its demands: {1}.",
    ),
    (
        "choice.because_only",
        "{0} is the only layout that meets the brief, at a cost of {2} and with {3} to 60 mph.",
    ),
    (
        "choice.because_other",
        "{0}: {1} would score higher, but {2}.",
    ),
    (
        "choice.because_range",
        "{0}: {1} would score higher, but it goes {2} and the brief asks for {3}. {0} goes {4}.",
    ),
    (
        "choice.because_too_slow",
        "{0}: {1} would score higher, but it takes {2} to 60 mph and the brief allows {3}. {0} takes {4}.",
    ),
    (
        "choice.because_turn",
        "{0}: {1} would score higher, but it cannot turn in place, which the brief asks for. {0} can, and costs {2} instead of {3}.",
    ),
    (
        "choice.because_vector",
        "{0}: {1} would score higher, but no axle of it has a motor per wheel, so it cannot vector torque. The motors of {0} make a yaw moment of {2}.",
    ),
    ("choice.name_cost", "the cost"),
    ("choice.name_energy", "the energy for the distance"),
    ("choice.name_room", "the room left behind"),
    ("choice.name_time", "the time to 60 mph"),
    ("dimension.acceleration", "acceleration"),
    (
        "dimension.acceleration_gain",
        "lateral acceleration for each steer angle",
    ),
    ("dimension.angle", "an angle"),
    ("dimension.area", "area"),
    ("dimension.cornering_stiffness", "cornering stiffness"),
    ("dimension.density", "density"),
    ("dimension.distance", "distance"),
    ("dimension.energy", "energy"),
    ("dimension.energy_per_distance", "energy for a distance"),
    ("dimension.force", "force"),
    ("dimension.frequency", "frequency"),
    ("dimension.inertia", "moment of inertia"),
    ("dimension.length", "length"),
    ("dimension.mass", "mass"),
    ("dimension.power", "power"),
    ("dimension.power_density", "power density"),
    ("dimension.pressure", "pressure"),
    ("dimension.ratio", "a pure number"),
    ("dimension.rotation", "rotational speed"),
    ("dimension.slope", "slope"),
    ("dimension.speed", "speed"),
    (
        "dimension.steer_gradient",
        "steer angle for each lateral acceleration",
    ),
    ("dimension.stored_energy", "energy of a battery"),
    ("dimension.time", "time"),
    ("dimension.torque", "torque"),
    ("dimension.volume", "volume"),
    ("dimension.wear_per_energy", "wear per energy"),
    ("dimension.worn_mass", "worn mass"),
    ("dimension.yaw_gain", "yaw rate for each steer angle"),
    ("dimension.yaw_rate", "yaw rate"),
    ("figure.axis.acceleration", "acceleration"),
    ("figure.axis.axle_load", "axle load"),
    ("figure.axis.friction", "peak friction"),
    ("figure.axis.front_share", "front share"),
    ("figure.axis.lateral_acceleration", "lateral acceleration"),
    ("figure.axis.limit", "traction limit"),
    ("figure.axis.sliding_friction", "sliding friction"),
    ("figure.axis.speed", "speed"),
    ("figure.axis.steady_share", "share of the steady value"),
    ("figure.axis.steer_angle", "steer angle"),
    ("figure.axis.time", "time"),
    ("figure.axis.torque_needed", "mean wheel torque needed"),
    ("figure.axis.wheel_torque", "highest wheel torque"),
    ("figure.axis.width", "width"),
    ("figure.axis.yaw_moment", "yaw moment"),
    ("figure.axis.yaw_rate", "yaw rate"),
    ("figure.braking", "braking force"),
    ("figure.caution", "Caution"),
    ("figure.cg_height", "CG height {0}"),
    ("figure.choice.bar", "{0}: from {1} to {2}"),
    ("figure.choice.bar_told", "{0} ({1}) gives {2}"),
    ("figure.choice.bars_axis", "smallest change, %"),
    (
        "figure.choice.bars_none",
        "Nothing changes the recommendation, each alone and up to {0}",
    ),
    (
        "figure.choice.bars_title",
        "What would change the recommendation, each alone and up to {0}",
    ),
    (
        "figure.choice.chart_describe",
        "Cost and time to 60 mph of each layout: {0}. {1}",
    ),
    (
        "figure.choice.chart_key",
        "Full dots: on the Pareto front of all that has a weight. In brackets: does not meet the brief. Costs are invented.",
    ),
    (
        "figure.choice.chart_title",
        "What a cost buys: {0} is recommended",
    ),
    (
        "figure.choice.describe",
        "{0} Plan view of a car that faces right with layout {1}: {2}. {3}.",
    ),
    ("figure.choice.line_front", "best time for the cost"),
    ("figure.choice.shown", "Shown is {0}: {1}."),
    ("figure.choice.title", "For this brief: {0}"),
    ("figure.choice.title_none", "No layout meets this brief"),
    ("figure.cornering.alone", "Without help"),
    ("figure.cornering.brakes_front", "One brake in front"),
    ("figure.cornering.brakes_rear", "One brake behind"),
    (
        "figure.cornering.circle",
        "Circle: all the friction that a tyre has; arrow and per cent: what it uses.",
    ),
    (
        "figure.cornering.describe",
        "Plan view of a car that turns left at {0} on a radius of {1}, seen once for each way to make the same yaw moment.",
    ),
    (
        "figure.cornering.describe_alone",
        "Plan view of a car that turns left at {0} on a radius of {1}; steer angle {2}.",
    ),
    (
        "figure.cornering.describe_used",
        "Shares of their friction that the tyres use, front left, front right, rear left, rear right: {0}, {1}, {2}, {3}.",
    ),
    (
        "figure.cornering.describe_way",
        "{0}: {1} from the battery, steer angle {2}.",
    ),
    (
        "figure.cornering.limit_shown",
        "Shown is the fastest turn on this radius.",
    ),
    ("figure.cornering.line_ackermann", "Ackermann angle"),
    ("figure.cornering.line_full", "two tracks"),
    ("figure.cornering.line_lateral", "lateral acceleration"),
    ("figure.cornering.line_single", "single track"),
    ("figure.cornering.line_yaw", "yaw rate"),
    ("figure.cornering.mixed", "A brake in front, motors behind"),
    (
        "figure.cornering.moment_describe",
        "Yaw moment against lateral acceleration at {0}, a line for each steer angle, along which the sideslip angle changes from 10° to −10°. Where a line crosses zero the turn is steady.",
    ),
    (
        "figure.cornering.moment_key",
        "Each line: one steer angle, with the sideslip angle from 10° to −10°.",
    ),
    (
        "figure.cornering.moment_title",
        "At {0}, steered by {1}, the moments balance at {2}",
    ),
    ("figure.cornering.motors_front", "Two motors in front"),
    ("figure.cornering.motors_rear", "Two motors behind"),
    (
        "figure.cornering.note_brake",
        "brake at the inner wheel (black block), backward",
    ),
    (
        "figure.cornering.note_force",
        "motors at the two wheels, one forward, one back",
    ),
    ("figure.cornering.note_heat", "heat in the brake"),
    ("figure.cornering.note_power", "from the battery"),
    (
        "figure.cornering.note_slow",
        "lost each second if nothing holds the speed",
    ),
    (
        "figure.cornering.note_steer",
        "steer angle; {0} without help",
    ),
    ("figure.cornering.note_steer_alone", "steer angle"),
    (
        "figure.cornering.radius_describe",
        "Steer angle against lateral acceleration at a constant radius of {0}. It begins at the Ackermann angle of {1} and ends at {2} with {3}.",
    ),
    (
        "figure.cornering.radius_title",
        "On a radius of {0} the car can corner at {1}: {2}",
    ),
    (
        "figure.cornering.step_describe",
        "Yaw rate and lateral acceleration after a step of the steering, as shares of their steady values, against time. The yaw rate is at nine tenths {0} after half of the steering and goes {1} too far.",
    ),
    (
        "figure.cornering.step_title",
        "After a step of the steering the yaw rate needs {0}",
    ),
    ("figure.cornering.subtitle", "{0}, radius {1}, {2}."),
    (
        "figure.cornering.title",
        "For {0} of yaw moment the motors draw {1}, one brake {2}",
    ),
    (
        "figure.cornering.title_cannot",
        "This turn cannot be held: {0}",
    ),
    ("figure.cornering.title_plain", "A steady turn at {0}"),
    ("figure.drag", "drag"),
    ("figure.front_load", "front axle load, {0}"),
    ("figure.grade", "grade {0}"),
    ("figure.idle_drag.axis_battery", "energy from the battery"),
    ("figure.idle_drag.axis_energy", "energy from the battery"),
    ("figure.idle_drag.axis_force", "force at the wheels"),
    ("figure.idle_drag.axis_loss", "loss of one motor"),
    (
        "figure.idle_drag.bars_describe",
        "Bars of the energy for each layout: {0}.",
    ),
    ("figure.idle_drag.bars_reason", "{0}; idle motors {1}"),
    ("figure.idle_drag.bars_road", "road alone {0}"),
    (
        "figure.idle_drag.bars_title",
        "{0} takes {1}, {2} takes {3}",
    ),
    (
        "figure.idle_drag.bars_title_plain",
        "Energy from the battery",
    ),
    (
        "figure.idle_drag.bars_weak",
        "The motors are too weak for the cycle.",
    ),
    ("figure.idle_drag.cycle_own", "Own cycle."),
    ("figure.idle_drag.cycle_steady", "Steady {0}."),
    ("figure.idle_drag.cycle_wltc", "WLTC class 3b."),
    ("figure.idle_drag.describe", "Plan view. {0}."),
    (
        "figure.idle_drag.energy_describe",
        "Energy out of the battery along the cycle; braking brings some back. At the end: {0}.",
    ),
    ("figure.idle_drag.energy_title", "Out of the battery: {0}"),
    (
        "figure.idle_drag.legend",
        "coloured motor: it makes torque; grey: it turns along; cut shaft: it is disconnected",
    ),
    ("figure.idle_drag.line_both", "both axles above"),
    ("figure.idle_drag.line_front", "front axle above"),
    ("figure.idle_drag.line_hardest", "cycle at most"),
    ("figure.idle_drag.line_induction", "induction, idle"),
    (
        "figure.idle_drag.line_induction_drives",
        "induction, driving",
    ),
    ("figure.idle_drag.line_magnet", "magnets, idle"),
    ("figure.idle_drag.line_magnet_drives", "magnets, driving"),
    ("figure.idle_drag.line_most", "all motors"),
    ("figure.idle_drag.line_parted", "disconnected"),
    ("figure.idle_drag.line_rear", "rear axle above"),
    ("figure.idle_drag.line_road", "steady speed"),
    ("figure.idle_drag.line_speed", "speed"),
    (
        "figure.idle_drag.losses_describe",
        "Loss of one motor against speed, for each kind: idle, driving alone at a steady speed, and disconnected. At {0}: {1} with magnets, {2} induction, both idle.",
    ),
    (
        "figure.idle_drag.losses_sub",
        "Loss of one motor, from invented coefficients.",
    ),
    (
        "figure.idle_drag.losses_title",
        "At {0} an idle motor with magnets loses {1}, an induction motor {2}",
    ),
    (
        "figure.idle_drag.note_both",
        "at the wheels: from here on both axles lose less than one",
    ),
    ("figure.idle_drag.note_force", "force at the wheels"),
    (
        "figure.idle_drag.note_front_drives",
        "lost in front, for a torque of {0}",
    ),
    (
        "figure.idle_drag.note_front_idles",
        "lost in front, with no torque",
    ),
    (
        "figure.idle_drag.note_front_parted",
        "lost in front, disconnected",
    ),
    (
        "figure.idle_drag.note_rear_drives",
        "lost behind, for a torque of {0}",
    ),
    (
        "figure.idle_drag.note_rear_idles",
        "lost behind, with no torque",
    ),
    (
        "figure.idle_drag.note_rear_parted",
        "lost behind, disconnected",
    ),
    ("figure.idle_drag.phase_high", "end of high"),
    ("figure.idle_drag.phase_low", "end of low"),
    ("figure.idle_drag.phase_medium", "end of medium"),
    (
        "figure.idle_drag.speed_describe",
        "Speed against time: {0} in {2} s, up to {1}.",
    ),
    (
        "figure.idle_drag.speed_title",
        "The cycle: {0} in {2} s, up to {1}",
    ),
    (
        "figure.idle_drag.split_describe",
        "Force at the wheels against speed. {0}. Asked for now: {1}; the motors have {2}.",
    ),
    (
        "figure.idle_drag.split_sub",
        "Best split of the torque, for the least loss.",
    ),
    (
        "figure.idle_drag.split_title",
        "{0} at {1}: both axles drive from {2} on, one axle alone below",
    ),
    (
        "figure.idle_drag.split_title_always",
        "{0} at {1}: both axles always share, for an idle motor would lose as much",
    ),
    (
        "figure.idle_drag.split_title_never",
        "{0} at {1}: one axle alone is always better",
    ),
    (
        "figure.idle_drag.split_title_single",
        "{0} drives one axle: there is nothing to share",
    ),
    (
        "figure.idle_drag.title_both",
        "{0} at {1}: both axles work, the front one with {2} of the torque; all motors lose {3}",
    ),
    (
        "figure.idle_drag.title_front",
        "{0} at {1}: the front axle works alone; idling behind costs {2}",
    ),
    (
        "figure.idle_drag.title_none",
        "{0} at {1}: no motor drives, and turning along costs {2}",
    ),
    (
        "figure.idle_drag.title_rear",
        "{0} at {1}: the rear axle works alone; idling in front costs {2}",
    ),
    (
        "figure.idle_drag.title_single",
        "{0} at {1}: the drive loses {2}",
    ),
    (
        "figure.idle_drag.title_weak",
        "{0} at {1}: the motors have not that much torque",
    ),
    ("figure.inertia", "m·a"),
    ("figure.invented", "Invented vehicle \"{0}\"."),
    (
        "figure.launch.all_grip",
        "The tyres of all driven axles limit",
    ),
    ("figure.launch.battery", "The battery’s power limits"),
    ("figure.launch.by_battery", "the battery’s power"),
    (
        "figure.launch.by_front_lift",
        "the lift of the front wheels",
    ),
    ("figure.launch.by_grip", "the grip of the tyres"),
    ("figure.launch.by_motor_speed", "the motors’ highest speed"),
    ("figure.launch.by_nothing", "nothing"),
    ("figure.launch.by_power", "the motors’ power"),
    ("figure.launch.by_torque", "the motors’ torque"),
    (
        "figure.launch.chart_describe",
        "Lines of speed against time. Time to 60 mph: {0}.",
    ),
    (
        "figure.launch.chart_title",
        "{0} reaches 60 mph in {1}, {2} in {3}",
    ),
    ("figure.launch.chart_title_plain", "Speed against time"),
    (
        "figure.launch.describe",
        "Side view of a car that faces right, layout {0}, {1} after the start, at {2} and accelerating at {3}. Front axle load {4}, rear axle load {5}; slip front {6}, rear {7}. {8}.",
    ),
    ("figure.launch.front_grip", "The front tyres limit"),
    (
        "figure.launch.key",
        "What limits: front tyres (blue, short dashes), rear tyres (orange, long dashes), all tyres (green, dash and dot), motor torque (dots), power (solid line).",
    ),
    (
        "figure.launch.motor_speed",
        "The motors’ highest speed limits",
    ),
    ("figure.launch.phases_1", "{0} all the way"),
    ("figure.launch.phases_2", "{0} until {1}, then {2}"),
    (
        "figure.launch.phases_3",
        "{0} until {1}, {2} until {3}, then {4}",
    ),
    (
        "figure.launch.phases_4",
        "{0} until {1}, {2} until {3}, {4} until {5}, then {6}",
    ),
    ("figure.launch.power", "The motors' power limits"),
    ("figure.launch.rear_grip", "The rear tyres limit"),
    (
        "figure.launch.title",
        "{0} after {1}: {2}, {3} from the start",
    ),
    (
        "figure.launch.title_start",
        "{0} at the start: 60 mph after {1}",
    ),
    ("figure.launch.title_start_never", "{0} at the start: {1}"),
    ("figure.launch.torque", "The motors' torque limits"),
    ("figure.line.asked", "asked for"),
    ("figure.line.available", "one motor has"),
    ("figure.line.front", "front axle"),
    ("figure.line.front_room", "front"),
    ("figure.line.has", "a motor gives {0}"),
    ("figure.line.needed", "needed"),
    ("figure.line.one_unit", "one unit"),
    ("figure.line.reached", "reached"),
    ("figure.line.rear", "rear axle"),
    ("figure.line.rear_room", "rear"),
    ("figure.line.two_units", "two units"),
    (
        "figure.load_transfer.chart_describe",
        "Two straight lines: the front axle load falls and the rear axle load rises with acceleration. At {0} they are {1} and {2}. The load is 2 : 1 at {3}; the front axle lifts at {4}.",
    ),
    (
        "figure.load_transfer.chart_title",
        "Axle loads against acceleration",
    ),
    (
        "figure.load_transfer.describe",
        "Side view of a car that faces right. Front axle load {0}, rear axle load {1}. The inertial force of {2} acts at the centre of gravity, {3} above the ground.",
    ),
    (
        "figure.load_transfer.title",
        "Accelerating at {0}, the rear axle carries {1} times the front",
    ),
    (
        "figure.load_transfer.title_braking",
        "Braking at {0}, the front axle carries {1} times the rear",
    ),
    (
        "figure.load_transfer.title_steady",
        "At a steady speed, the rear axle carries {1} times the front",
    ),
    ("figure.mark.front_lift", "front lifts"),
    ("figure.mark.two_to_one", "2 : 1"),
    (
        "figure.motor_split.arrow",
        "arrow: the force that it pushes with",
    ),
    (
        "figure.motor_split.chart_describe",
        "The front share of the load falls in a straight line from {0} at rest. Like motors keep their share. They meet at: {1}.",
    ),
    (
        "figure.motor_split.chart_title",
        "Front share of the load, and of the torque of like motors",
    ),
    (
        "figure.motor_split.circle",
        "circle: the friction that the patch has",
    ),
    (
        "figure.motor_split.describe",
        "Plan view of a car that faces right with layout {0}: {1} in front, {2} behind. At its traction limit of {3} the load is split {4}, front to rear; like motors split their torque {5}.",
    ),
    ("figure.motor_split.line_load", "load"),
    ("figure.motor_split.mark_limit", "tyres end"),
    (
        "figure.motor_split.note_equal",
        "with the same torque from every motor (each at its best: {0})",
    ),
    (
        "figure.motor_split.note_load",
        "load, front to rear, at the limit of {0}",
    ),
    (
        "figure.motor_split.note_torque",
        "torque of like motors, front to rear",
    ),
    (
        "figure.motor_split.title",
        "{0}: torque and load match at {1}",
    ),
    (
        "figure.motor_split.title_beyond",
        "{0}: torque and load would match at {1}, but the tyres end at {2}",
    ),
    (
        "figure.motor_split.title_braking",
        "{0}: torque and load would match only in braking, at {1}",
    ),
    (
        "figure.motor_split.title_one_axle",
        "{0} drives one axle and reaches {1}",
    ),
    ("figure.own", "Vehicle as given."),
    (
        "figure.packaging.chart_describe",
        "Room at the front axle falls as the steer angle grows; at {0} it is {1}. The rear axle keeps {2}. One unit needs {3}, two need {4}.",
    ),
    (
        "figure.packaging.chart_title",
        "Steered wheels sweep the room: the front axle loses {0} at {1}",
    ),
    (
        "figure.packaging.describe",
        "Plan view of a car that faces right, its front wheels at full lock, {0} to the left. {1}. A drive unit has {2} and is {3} wide. Between the wheels there are {4} in front and {5} behind.",
    ),
    ("figure.packaging.key_room", "dashed: room for drive units"),
    (
        "figure.packaging.key_swept",
        "dash and dot: what a front wheel sweeps from lock to lock",
    ),
    ("figure.packaging.key_unit", "full: drive units, to scale"),
    (
        "figure.packaging.key_unit_cut",
        "full: drive units, cut off where they are far too wide",
    ),
    (
        "figure.packaging.note_extraordinary",
        "more than 16 kW/L for motor, inverter, gears and differential together: extraordinary, says the trade (no source)",
    ),
    (
        "figure.packaging.note_front",
        "room at the front axle; its units need {0}",
    ),
    (
        "figure.packaging.note_front_free",
        "room at the front axle, which has no unit",
    ),
    (
        "figure.packaging.note_rear",
        "room at the rear axle; its units need {0}",
    ),
    (
        "figure.packaging.note_rear_free",
        "room at the rear axle, which has no unit",
    ),
    (
        "figure.packaging.note_unit",
        "one drive unit, {0} for the whole set",
    ),
    ("figure.packaging.title", "{0} fits, with {1} to spare"),
    (
        "figure.packaging.title_cannot",
        "{0} does not fit: {1} are lacking",
    ),
    ("figure.rear_load", "rear axle load, {0}"),
    ("figure.squat", "Squat drawn {0} times larger than it is."),
    ("figure.traction.axis", "traction limit, g"),
    (
        "figure.traction.bars_describe",
        "Bars of the traction limit by layout: {0}.",
    ),
    ("figure.traction.bars_row", "{0} {1}, {2}"),
    (
        "figure.traction.bars_sub",
        "Traction limit with a peak friction of {0}.",
    ),
    ("figure.traction.bars_title", "{0} gets {1}, {2} gets {3}"),
    (
        "figure.traction.bars_title_one",
        "Traction limit of {0}: {1}",
    ),
    (
        "figure.traction.cannot_hold",
        "cannot keep its speed here: {0}",
    ),
    (
        "figure.traction.chart_describe",
        "Lines of the traction limit against peak friction. At {0}: {1}.",
    ),
    (
        "figure.traction.chart_title",
        "Traction limit against friction",
    ),
    ("figure.traction.mu", "friction {0}"),
    (
        "figure.traction.side_describe",
        "Side view of a car at the traction limit of layout {0}: {1}, {2}. Front axle load {3}, rear axle load {4}; tractive force front {5}, rear {6}.",
    ),
    ("figure.traction.side_title", "{0}: {1} and no more, {2}"),
    ("figure.tractive", "tractive force"),
    (
        "figure.turn_in_place.arrow",
        "arrow: the friction it uses, opposing the slide",
    ),
    ("figure.turn_in_place.centre", "turning centre"),
    (
        "figure.turn_in_place.chart_describe",
        "The torque at the wheel that needs most grows in proportion to friction. At {0} it is {1}.",
    ),
    (
        "figure.turn_in_place.chart_title",
        "Torque to turn in place against friction",
    ),
    (
        "figure.turn_in_place.circle",
        "circle: all the friction that the patch has",
    ),
    (
        "figure.turn_in_place.describe",
        "Plan view of a car that faces right and turns anticlockwise on the spot. Right wheels push forward, left wheels rearward: each front wheel with {0}, each rear wheel with {1}. Mean torque {2} at a wheel, energy {3} for one full turn.",
    ),
    (
        "figure.turn_in_place.describe_cannot",
        "Plan view of a car with layout {0}. {1}",
    ),
    (
        "figure.turn_in_place.moment",
        "Turning in place: {1} turned after {0}",
    ),
    (
        "figure.turn_in_place.moment_describe",
        "Plan view of a car with layout {0}, {1} after it began to turn anticlockwise. It has turned {2}; its yaw rate is {3}. Its centre of gravity is {4} from where it stood. Fastest sliding patch: {5}.",
    ),
    (
        "figure.turn_in_place.note_drift",
        "downhill in each slow turn",
    ),
    (
        "figure.turn_in_place.note_drives",
        "most that the driven pair can make",
    ),
    (
        "figure.turn_in_place.note_energy",
        "into tyres and ground for one full turn",
    ),
    (
        "figure.turn_in_place.note_full_turn",
        "for the first full turn",
    ),
    (
        "figure.turn_in_place.note_holds",
        "with which the other axle resists",
    ),
    (
        "figure.turn_in_place.note_left",
        "to the left: the turning centre",
    ),
    (
        "figure.turn_in_place.note_lock",
        "circle of the front axle with the wheels at full lock: not in place",
    ),
    (
        "figure.turn_in_place.note_share",
        "of it pushes the wheel along",
    ),
    ("figure.turn_in_place.note_slide", "fastest sliding patch"),
    (
        "figure.turn_in_place.note_torque",
        "at each wheel on average (a motor gives {0})",
    ),
    (
        "figure.turn_in_place.note_torque_alone",
        "at each wheel on average",
    ),
    (
        "figure.turn_in_place.note_tread",
        "of tread lost in one turn ({0} to {1}, an assumption)",
    ),
    ("figure.turn_in_place.note_way", "from where the CG stood"),
    ("figure.turn_in_place.note_yaw", "yaw rate"),
    (
        "figure.turn_in_place.slide",
        "dashed: the sliding velocity of the patch",
    ),
    (
        "figure.turn_in_place.spin_describe",
        "Yaw rate against time. {0}",
    ),
    (
        "figure.turn_in_place.spin_title",
        "{0} for a full turn at {1}",
    ),
    (
        "figure.turn_in_place.spin_title_plain",
        "Yaw rate from standstill",
    ),
    (
        "figure.turn_in_place.surface_no",
        "not feasible; {0} per turn",
    ),
    ("figure.turn_in_place.surface_yes", "feasible; {0} per turn"),
    (
        "figure.turn_in_place.surfaces_describe",
        "Bars of the mean wheel torque needed to turn in place, by surface: {0}.",
    ),
    (
        "figure.turn_in_place.surfaces_sub",
        "Layout {0}, level ground.",
    ),
    (
        "figure.turn_in_place.surfaces_title",
        "{0} takes {1} times the torque of {2}",
    ),
    (
        "figure.turn_in_place.title",
        "Turning in place: every contact patch slides",
    ),
    (
        "figure.turn_in_place.title_cannot",
        "{0} cannot turn in place",
    ),
    (
        "figure.turn_in_place.title_torque",
        "Turning in place takes {0} at each wheel",
    ),
    (
        "figure.turn_in_place.trace",
        "lines: traces of the tyres on the ground",
    ),
    ("figure.weight", "weight"),
    ("figure.wheelbase", "wheelbase {0}"),
    (
        "help.air.density",
        "Density of the air. At sea level and 15 °C: 1.225 kg/m³.",
    ),
    (
        "help.choice.differential_cost",
        "In the unit of the other costs. The default is invented.",
    ),
    (
        "help.choice.disconnect_cost",
        "In the unit of the other costs. The default is invented.",
    ),
    (
        "help.choice.gear_set_cost",
        "In the unit of the other costs. The default is invented.",
    ),
    (
        "help.choice.half_shaft_cost",
        "In the unit of the other costs. The default is invented.",
    ),
    (
        "help.choice.inverter_cost",
        "In the unit of the other costs. The default is invented.",
    ),
    (
        "help.choice.least_range",
        "Over the cycle that is driven. Left out, any range will do.",
    ),
    (
        "help.choice.motor_cost",
        "In any unit. The default is invented.",
    ),
    (
        "help.choice.spread",
        "Each input is varied alone, up and down by this share of its value.",
    ),
    (
        "help.choice.start_grade",
        "The car must start from rest on it, with its own motors. Left out, it need not.",
    ),
    (
        "help.choice.start_surface",
        "A surface of the adhesion table.",
    ),
    (
        "help.choice.target_time",
        "A layout that takes longer does not meet the brief. Left out, any time will do.",
    ),
    (
        "help.choice.torque_vectoring",
        "Whether the motors must move torque from left to right, without the brakes.",
    ),
    (
        "help.choice.turn_in_place",
        "Whether a layout must turn the car in place by counter-rotation.",
    ),
    (
        "help.choice.turn_surface",
        "A surface of the adhesion table, level.",
    ),
    (
        "help.choice.weight_cost",
        "What a lower cost is worth. The default is invented.",
    ),
    (
        "help.choice.weight_energy",
        "What less energy for the distance is worth. The default is invented.",
    ),
    (
        "help.choice.weight_room",
        "What width left free between the rear wheels is worth: luggage goes there. The default is invented.",
    ),
    (
        "help.choice.weight_time",
        "What a shorter time to 60 mph is worth. The default is invented.",
    ),
    (
        "help.cornering.axle",
        "Axle whose two motors work against each other, or whose inner wheel is braked.",
    ),
    ("help.cornering.chart", "What the chart shows."),
    (
        "help.cornering.front_share",
        "Share of the yaw moment that a front brake makes while motors behind make the rest.",
    ),
    (
        "help.cornering.radius",
        "Radius of the path of the centre of gravity. The car turns left; right is the mirror image.",
    ),
    ("help.cornering.speed", "Speed of the steady turn."),
    (
        "help.cornering.yaw_moment",
        "Yaw moment into the turn that motors or brakes are to make.",
    ),
    (
        "help.idle_drag.acceleration",
        "Acceleration at which the sharing of the torque is looked at; below zero the motors brake.",
    ),
    (
        "help.idle_drag.auxiliary_power",
        "Power of all that does not drive: lights, pumps, heating.",
    ),
    (
        "help.idle_drag.chart",
        "What the chart shows: losses of an idle motor, the best split, the energy or the speed along the cycle.",
    ),
    (
        "help.idle_drag.cycle",
        "What is driven: the published cycle WLTC class 3b, a steady speed, or a cycle of your own.",
    ),
    (
        "help.idle_drag.regeneration_power",
        "Most power with which all motors together brake; the brakes take the rest.",
    ),
    (
        "help.idle_drag.speed",
        "Speed at which the sharing of the torque is looked at, and the steady speed.",
    ),
    (
        "help.idle_drag.trace",
        "A cycle of your own: lines of time in s and speed in km/h. The head may name m/s or mph. In a scenario file and as an attribute also the address of a file that holds the lines.",
    ),
    (
        "help.launch.model",
        "Full: tyres slip, load moves as fast as the springs let it. Ideal: tyres grip at once and load moves at once, as in the first sums on paper.",
    ),
    (
        "help.launch.slip_target",
        "Slip that traction control holds. Left out: the peak slip.",
    ),
    (
        "help.launch.time",
        "Moment of the run that the side view shows.",
    ),
    (
        "help.launch.traction_control",
        "On: the motors hold the slip target. Off: they give all they have.",
    ),
    ("help.layout", "The layout that the figure shows."),
    (
        "help.layouts",
        "The layouts to compare, by where their motors are.",
    ),
    (
        "help.load_transfer.acceleration",
        "Acceleration along the road. Braking is negative.",
    ),
    (
        "help.load_transfer.speed",
        "Speed at which drag and lift act. At rest there are none.",
    ),
    (
        "help.motor_split.drive_unit_cost",
        "Cost of one motor with its inverter and gears, in any unit. An assumption: change it to yours.",
    ),
    (
        "help.motor_split.drive_unit_mass",
        "Mass of one motor with its inverter and gears. An assumption: change it to yours.",
    ),
    (
        "help.motor_split.speed",
        "Speed up to which the motors are to reach the traction limit.",
    ),
    (
        "help.packaging.box_fill",
        "Volume of the drive unit over that of its outer box.",
    ),
    (
        "help.packaging.clearance",
        "Kept free of everything, for a wheel that moves and for dirt.",
    ),
    ("help.packaging.gap", "Between two drive units on one axle."),
    (
        "help.packaging.gear_power_density",
        "Power over volume of gears and differential together. The default is invented.",
    ),
    (
        "help.packaging.half_shaft_length",
        "From the middle of the wheel to the drive unit. A shorter shaft bends its joints too far.",
    ),
    (
        "help.packaging.inverter_power_density",
        "Power over volume of the inverter alone. The default is invented.",
    ),
    (
        "help.packaging.motor_power_density",
        "Power over volume of the motor alone. The default is invented.",
    ),
    (
        "help.packaging.structure_width",
        "Width that the body and the suspension take on each side.",
    ),
    (
        "help.packaging.unit_height",
        "Height of the unit's outer box.",
    ),
    (
        "help.packaging.unit_length",
        "The box lies midway over the axle.",
    ),
    (
        "help.surface.friction_peak",
        "Largest coefficient of friction between tyre and ground.",
    ),
    (
        "help.surface.friction_peak_left",
        "Largest coefficient of friction under the left wheels, where it differs.",
    ),
    (
        "help.surface.friction_peak_right",
        "Largest coefficient of friction under the right wheels, where it differs.",
    ),
    (
        "help.surface.friction_sliding",
        "Coefficient of friction of a tyre that slides. Left out without a surface: the vehicle's own peak friction.",
    ),
    (
        "help.surface.friction_sliding_left",
        "Sliding coefficient of friction under the left wheels, where it differs.",
    ),
    (
        "help.surface.friction_sliding_right",
        "Sliding coefficient of friction under the right wheels, where it differs.",
    ),
    (
        "help.surface.grade",
        "Slope of the road, rise over run. Uphill is positive.",
    ),
    (
        "help.surface.kind",
        "A surface of the published adhesion table. Left out: dry asphalt with the vehicle's own tyres.",
    ),
    (
        "help.traction.front_axle_type",
        "Independent, or a solid axle whose drive torque moves load from the right wheel to the left one.",
    ),
    (
        "help.traction.front_differential",
        "How one front motor's torque reaches its two wheels.",
    ),
    (
        "help.traction.front_share",
        "Front share of the tractive force where it is fixed. Left out: each axle gives what it can.",
    ),
    (
        "help.traction.motor_limit",
        "Whether the motors' own torque may limit, or only tyres and ground.",
    ),
    (
        "help.traction.rear_axle_type",
        "Independent, or a solid axle whose drive torque moves load from the right wheel to the left one.",
    ),
    (
        "help.traction.rear_differential",
        "How one rear motor's torque reaches its two wheels.",
    ),
    ("help.traction.speed", "Speed at which drag and lift act."),
    (
        "help.turn_in_place.front_to_rear_wheel_speed",
        "Speed of the front wheels over that of the rear wheels while turning in place.",
    ),
    (
        "help.turn_in_place.time",
        "Moment of the spin-up that the plan view shows. Without it, the slow steady turn is shown.",
    ),
    (
        "help.turn_in_place.wear_coefficient",
        "Volume of tread worn off per energy of friction. An assumption: without it, a value set by wear in ordinary driving is taken. Orders on roads: 0.001 to 0.01 mm³/J.",
    ),
    (
        "help.turn_in_place.yaw_rate",
        "Yaw rate for which the motors set the speed of the wheels.",
    ),
    (
        "help.vehicle.anti_lift_front",
        "Share of the front load change that the suspension links carry instead of the springs.",
    ),
    (
        "help.vehicle.anti_squat_rear",
        "Share of the rear load change that the suspension links carry instead of the springs.",
    ),
    (
        "help.vehicle.axle_load_front",
        "What a scale under the front wheels shows. With the rear one it gives mass and place of the centre of gravity, where these are not given.",
    ),
    (
        "help.vehicle.axle_load_rear",
        "What a scale under the rear wheels shows.",
    ),
    (
        "help.vehicle.base",
        "An invented demo vehicle. Every other vehicle field changes one value of it.",
    ),
    (
        "help.vehicle.battery_energy",
        "Usable energy of the battery.",
    ),
    (
        "help.vehicle.battery_power",
        "Most power that the battery gives all motors together. Left out: as much as they ask for.",
    ),
    (
        "help.vehicle.bearing_loss",
        "Loss in the bearings of a motor at the base speed, as a share of the peak power. The value is invented.",
    ),
    (
        "help.vehicle.body",
        "Body outline that the figure draws. It has no part in the sums.",
    ),
    (
        "help.vehicle.cg_height",
        "Height of the centre of gravity (CG) above the ground.",
    ),
    (
        "help.vehicle.cg_to_front_axle",
        "Distance of the centre of gravity (CG) behind the front axle.",
    ),
    (
        "help.vehicle.copper_loss_induction",
        "Loss in stator, rotor and inverter of an induction motor at peak torque, as a share of its peak power. The value is invented until you give yours.",
    ),
    (
        "help.vehicle.copper_loss_magnet",
        "Loss in copper and inverter of a permanent-magnet motor at peak torque, as a share of its peak power. The value is invented until you give yours.",
    ),
    (
        "help.vehicle.cornering_stiffness_front",
        "Lateral force of one front tyre for each slip angle, at small angles and at its load at rest.",
    ),
    (
        "help.vehicle.cornering_stiffness_rear",
        "The same of one rear tyre.",
    ),
    (
        "help.vehicle.damping_ratio",
        "Damping of the body on its springs, as a share of critical damping.",
    ),
    (
        "help.vehicle.disconnect",
        "Axles whose motors can be disconnected from their wheels when they make no torque.",
    ),
    (
        "help.vehicle.drag_area",
        "Drag coefficient times frontal area.",
    ),
    (
        "help.vehicle.drag_height",
        "Height at which the drag acts. Left out: CG height.",
    ),
    (
        "help.vehicle.drive_efficiency",
        "Share of the power that arrives, from battery to wheel and back alike.",
    ),
    (
        "help.vehicle.eddy_loss",
        "Iron loss by eddy currents at the base speed and full field, as a share of the peak power. The value is invented.",
    ),
    (
        "help.vehicle.final_drive_ratio",
        "Ratio between driveshaft and solid axle.",
    ),
    (
        "help.vehicle.front_machine",
        "Kind of the motors on the front axle: with permanent magnets, or induction.",
    ),
    (
        "help.vehicle.gear_efficiency",
        "Share of a motor's power that its gears pass on.",
    ),
    (
        "help.vehicle.hysteresis_loss",
        "Iron loss by hysteresis at the base speed and full field, as a share of the peak power. The value is invented.",
    ),
    (
        "help.vehicle.lift_area_front",
        "Lift coefficient of the front axle times frontal area. Downforce is negative.",
    ),
    (
        "help.vehicle.lift_area_rear",
        "Lift coefficient of the rear axle times frontal area. Downforce is negative.",
    ),
    (
        "help.vehicle.magnetising_loss",
        "Copper loss of the current that makes the field of an induction motor, as a share of its peak power. The value is invented.",
    ),
    ("help.vehicle.mass", "Mass of the vehicle with its load."),
    (
        "help.vehicle.max_steer_angle",
        "How far the front wheels are steered to either side.",
    ),
    (
        "help.vehicle.motor_decline_speed",
        "Speed of the motor above which its power falls as one over the speed. Left out: none.",
    ),
    (
        "help.vehicle.motor_max_speed",
        "Highest speed of the motor. Left out: none.",
    ),
    ("help.vehicle.motor_power", "Peak power of one motor."),
    (
        "help.vehicle.motor_ratio",
        "Ratio between one motor and its wheels.",
    ),
    (
        "help.vehicle.motor_torque",
        "Peak torque of one motor at its shaft.",
    ),
    (
        "help.vehicle.rear_machine",
        "Kind of the motors on the rear axle: with permanent magnets, or induction.",
    ),
    (
        "help.vehicle.ride_frequency_front",
        "Natural frequency of the body on its front springs.",
    ),
    (
        "help.vehicle.ride_frequency_rear",
        "Natural frequency of the body on its rear springs.",
    ),
    (
        "help.vehicle.roll_stiffness_front_share",
        "Front share of the roll stiffness.",
    ),
    (
        "help.vehicle.rolling_resistance",
        "Rolling-resistance coefficient.",
    ),
    (
        "help.vehicle.rotor_inertia",
        "Moment of inertia of one rotor about its own axis.",
    ),
    (
        "help.vehicle.track_front",
        "Distance between the front wheels.",
    ),
    (
        "help.vehicle.track_rear",
        "Distance between the rear wheels.",
    ),
    (
        "help.vehicle.tyre_friction",
        "Peak coefficient of friction that the vehicle's own tyres have on dry asphalt.",
    ),
    (
        "help.vehicle.tyre_load_sensitivity",
        "Share of its friction that a tyre loses when its load rises by the reference load.",
    ),
    (
        "help.vehicle.tyre_peak_slip",
        "Slip at which a tyre grips best. Left out, or without a wheel inertia: the tyre grips at once and needs no slip.",
    ),
    (
        "help.vehicle.tyre_pressure",
        "Inflation pressure. It sets the size of the contact patch.",
    ),
    (
        "help.vehicle.tyre_reference_load",
        "Wheel load at which the coefficient of friction is as given. Left out: a quarter of the weight.",
    ),
    (
        "help.vehicle.tyre_relaxation_length",
        "Distance that a tyre rolls while its slip builds up.",
    ),
    (
        "help.vehicle.tyre_width_front",
        "Width of a front tyre, for the figure.",
    ),
    (
        "help.vehicle.tyre_width_rear",
        "Width of a rear tyre, for the figure.",
    ),
    (
        "help.vehicle.weakening_loss",
        "Copper loss of the current that would cancel the field of the magnets, as a share of the peak power. Above the base speed a part of it flows, with torque and without. The value is invented.",
    ),
    (
        "help.vehicle.wheel_inertia",
        "Moment of inertia of one wheel with its tyre about its axle.",
    ),
    ("help.vehicle.wheel_radius", "Rolling radius of the wheels."),
    ("help.vehicle.wheelbase", "Distance between the axles."),
    (
        "help.vehicle.windage_loss",
        "Loss of a rotor in its air at the base speed, as a share of the peak power. The value is invented.",
    ),
    (
        "help.vehicle.yaw_inertia",
        "Moment of inertia about the vertical axis; m·a·b where it is not given (common practice).",
    ),
    ("input.air.density", "air density"),
    ("input.choice.differential_cost", "cost of a differential"),
    ("input.choice.disconnect_cost", "cost of a disconnect"),
    ("input.choice.gear_set_cost", "cost of a gear set"),
    ("input.choice.half_shaft_cost", "cost of a half shaft"),
    ("input.choice.inverter_cost", "cost of an inverter"),
    ("input.choice.least_range", "shortest range"),
    ("input.choice.motor_cost", "cost of a motor"),
    ("input.choice.spread", "range of the variation"),
    ("input.choice.start_grade", "grade to start on"),
    ("input.choice.start_surface", "surface of that grade"),
    ("input.choice.target_time", "longest time to 60 mph"),
    ("input.choice.torque_vectoring", "must vector torque"),
    ("input.choice.turn_in_place", "must turn in place"),
    ("input.choice.turn_surface", "surface on which it turns"),
    ("input.choice.weight_cost", "weight of the cost"),
    ("input.choice.weight_energy", "weight of the energy"),
    ("input.choice.weight_room", "weight of the room behind"),
    ("input.choice.weight_time", "weight of the time"),
    ("input.cornering.axle", "axle that makes it"),
    ("input.cornering.chart", "chart"),
    (
        "input.cornering.front_share",
        "share of the brakes in the mixed case",
    ),
    ("input.cornering.radius", "radius of the turn"),
    ("input.cornering.speed", "speed"),
    ("input.cornering.yaw_moment", "yaw moment wanted"),
    ("input.idle_drag.acceleration", "acceleration"),
    ("input.idle_drag.auxiliary_power", "other power"),
    ("input.idle_drag.chart", "chart"),
    ("input.idle_drag.cycle", "cycle"),
    (
        "input.idle_drag.regeneration_power",
        "braking power of the motors",
    ),
    ("input.idle_drag.speed", "speed"),
    ("input.idle_drag.trace", "own cycle (CSV file)"),
    ("input.launch.model", "model"),
    ("input.launch.slip_target", "slip target"),
    ("input.launch.time", "time shown"),
    ("input.launch.traction_control", "traction control"),
    ("input.layout", "layout shown"),
    ("input.layouts", "layouts"),
    ("input.load_transfer.acceleration", "acceleration"),
    ("input.load_transfer.speed", "speed"),
    ("input.motor_split.drive_unit_cost", "cost of a drive unit"),
    ("input.motor_split.drive_unit_mass", "mass of a drive unit"),
    ("input.motor_split.speed", "speed"),
    (
        "input.packaging.box_fill",
        "share of its box that a unit fills",
    ),
    ("input.packaging.clearance", "clearance beside a wheel"),
    ("input.packaging.gap", "gap between two units"),
    (
        "input.packaging.gear_power_density",
        "gears and differential, power per litre",
    ),
    (
        "input.packaging.half_shaft_length",
        "least length of a half shaft",
    ),
    (
        "input.packaging.inverter_power_density",
        "inverter, power per litre",
    ),
    (
        "input.packaging.motor_power_density",
        "motor, power per litre",
    ),
    (
        "input.packaging.structure_width",
        "rails and suspension beside a wheel",
    ),
    ("input.packaging.unit_height", "height of a unit"),
    (
        "input.packaging.unit_length",
        "length of a unit along the car",
    ),
    ("input.surface.friction_peak", "peak friction"),
    ("input.surface.friction_peak_left", "peak friction, left"),
    ("input.surface.friction_peak_right", "peak friction, right"),
    ("input.surface.friction_sliding", "sliding friction"),
    (
        "input.surface.friction_sliding_left",
        "sliding friction, left",
    ),
    (
        "input.surface.friction_sliding_right",
        "sliding friction, right",
    ),
    ("input.surface.grade", "grade"),
    ("input.surface.kind", "surface"),
    ("input.traction.front_axle_type", "front axle"),
    ("input.traction.front_differential", "front differential"),
    ("input.traction.front_share", "front share of force"),
    ("input.traction.motor_limit", "motors"),
    ("input.traction.rear_axle_type", "rear axle"),
    ("input.traction.rear_differential", "rear differential"),
    ("input.traction.speed", "speed"),
    (
        "input.turn_in_place.front_to_rear_wheel_speed",
        "front to rear wheel speed",
    ),
    ("input.turn_in_place.time", "time shown"),
    ("input.turn_in_place.wear_coefficient", "wear coefficient"),
    ("input.turn_in_place.yaw_rate", "yaw rate asked for"),
    ("input.vehicle.anti_lift_front", "anti-lift, front"),
    ("input.vehicle.anti_squat_rear", "anti-squat, rear"),
    ("input.vehicle.axle_load_front", "front axle on a scale"),
    ("input.vehicle.axle_load_rear", "rear axle on a scale"),
    ("input.vehicle.base", "vehicle"),
    ("input.vehicle.battery_energy", "battery"),
    ("input.vehicle.battery_power", "battery power"),
    ("input.vehicle.bearing_loss", "bearing loss"),
    ("input.vehicle.body", "body outline"),
    ("input.vehicle.cg_height", "CG height"),
    ("input.vehicle.cg_to_front_axle", "CG behind front axle"),
    (
        "input.vehicle.copper_loss_induction",
        "copper loss, induction",
    ),
    ("input.vehicle.copper_loss_magnet", "copper loss, magnets"),
    (
        "input.vehicle.cornering_stiffness_front",
        "cornering stiffness, front tyre",
    ),
    (
        "input.vehicle.cornering_stiffness_rear",
        "cornering stiffness, rear tyre",
    ),
    ("input.vehicle.damping_ratio", "damping ratio"),
    ("input.vehicle.disconnect", "axle disconnect"),
    ("input.vehicle.drag_area", "drag area"),
    ("input.vehicle.drag_height", "drag height"),
    (
        "input.vehicle.drive_efficiency",
        "drive efficiency, battery to wheel",
    ),
    ("input.vehicle.eddy_loss", "eddy-current loss"),
    ("input.vehicle.final_drive_ratio", "final drive ratio"),
    ("input.vehicle.front_machine", "front motor"),
    ("input.vehicle.gear_efficiency", "gear efficiency"),
    ("input.vehicle.hysteresis_loss", "hysteresis loss"),
    ("input.vehicle.lift_area_front", "lift area, front"),
    ("input.vehicle.lift_area_rear", "lift area, rear"),
    ("input.vehicle.magnetising_loss", "magnetising loss"),
    ("input.vehicle.mass", "mass"),
    ("input.vehicle.max_steer_angle", "steer angle at full lock"),
    (
        "input.vehicle.motor_decline_speed",
        "motor's second corner speed",
    ),
    ("input.vehicle.motor_max_speed", "motor's highest speed"),
    ("input.vehicle.motor_power", "motor power"),
    ("input.vehicle.motor_ratio", "motor ratio"),
    ("input.vehicle.motor_torque", "motor torque"),
    ("input.vehicle.rear_machine", "rear motor"),
    (
        "input.vehicle.ride_frequency_front",
        "ride frequency, front",
    ),
    ("input.vehicle.ride_frequency_rear", "ride frequency, rear"),
    (
        "input.vehicle.roll_stiffness_front_share",
        "front share of roll stiffness",
    ),
    ("input.vehicle.rolling_resistance", "rolling resistance"),
    ("input.vehicle.rotor_inertia", "rotor inertia"),
    ("input.vehicle.track_front", "front track width"),
    ("input.vehicle.track_rear", "rear track width"),
    ("input.vehicle.tyre_friction", "tyre friction"),
    ("input.vehicle.tyre_load_sensitivity", "load sensitivity"),
    ("input.vehicle.tyre_peak_slip", "peak slip"),
    ("input.vehicle.tyre_pressure", "tyre pressure"),
    ("input.vehicle.tyre_reference_load", "reference wheel load"),
    ("input.vehicle.tyre_relaxation_length", "relaxation length"),
    ("input.vehicle.tyre_width_front", "tyre width, front"),
    ("input.vehicle.tyre_width_rear", "tyre width, rear"),
    ("input.vehicle.weakening_loss", "field-weakening loss"),
    ("input.vehicle.wheel_inertia", "wheel inertia"),
    ("input.vehicle.wheel_radius", "wheel radius"),
    ("input.vehicle.wheelbase", "wheelbase"),
    ("input.vehicle.windage_loss", "windage loss"),
    ("input.vehicle.yaw_inertia", "yaw inertia"),
    ("option.as_fitted", "as fitted"),
    ("option.best_split", "best split"),
    ("option.both", "front and rear"),
    ("option.constant_radius", "constant-radius test"),
    ("option.energy", "energy along the cycle"),
    ("option.front", "front"),
    ("option.full", "full model"),
    ("option.ideal", "ideal grip"),
    ("option.idle_losses", "losses of an idle motor"),
    ("option.independent", "independent"),
    ("option.induction", "induction"),
    ("option.locked", "locked"),
    ("option.none", "none"),
    ("option.off", "off"),
    ("option.on", "on"),
    ("option.open", "open"),
    ("option.open_with_brakes", "open, with brakes"),
    ("option.own", "own cycle"),
    ("option.permanent_magnet", "permanent magnets"),
    ("option.rear", "rear"),
    ("option.saloon", "saloon"),
    ("option.small_car", "small car"),
    ("option.solid", "solid"),
    ("option.speed", "speed along the cycle"),
    ("option.sports_car", "sports car"),
    ("option.steady", "steady speed"),
    ("option.step_steer", "step steer"),
    ("option.unlimited", "unlimited"),
    ("option.utility", "utility"),
    ("option.wltc", "WLTC class 3b"),
    (
        "option.yaw_moment",
        "yaw moment against lateral acceleration",
    ),
    ("output.choice.because", "why"),
    (
        "output.choice.becomes.battery_energy",
        "recommended instead (the battery)",
    ),
    (
        "output.choice.becomes.cg_height",
        "recommended instead (the CG height)",
    ),
    (
        "output.choice.becomes.friction_peak",
        "recommended instead (the friction)",
    ),
    (
        "output.choice.becomes.inverter_cost",
        "recommended instead (the cost of an inverter)",
    ),
    (
        "output.choice.becomes.least_range",
        "recommended instead (the range asked for)",
    ),
    (
        "output.choice.becomes.mass",
        "recommended instead (the mass)",
    ),
    (
        "output.choice.becomes.motor_cost",
        "recommended instead (the cost of a motor)",
    ),
    (
        "output.choice.becomes.motor_power",
        "recommended instead (the motor's power)",
    ),
    (
        "output.choice.becomes.motor_torque",
        "recommended instead (the motor's torque)",
    ),
    (
        "output.choice.becomes.start_grade",
        "recommended instead (the grade)",
    ),
    (
        "output.choice.becomes.target_time",
        "recommended instead (the target time)",
    ),
    (
        "output.choice.becomes.weight_cost",
        "recommended instead (the weight of the cost)",
    ),
    (
        "output.choice.becomes.weight_energy",
        "recommended instead (the weight of the energy)",
    ),
    (
        "output.choice.becomes.weight_room",
        "recommended instead (the weight of the room)",
    ),
    (
        "output.choice.becomes.weight_time",
        "recommended instead (the weight of the time)",
    ),
    (
        "output.choice.changes_at.battery_energy",
        "sensitivity to the battery",
    ),
    (
        "output.choice.changes_at.cg_height",
        "sensitivity to the CG height",
    ),
    (
        "output.choice.changes_at.friction_peak",
        "sensitivity to the friction",
    ),
    (
        "output.choice.changes_at.inverter_cost",
        "sensitivity to the cost of an inverter",
    ),
    (
        "output.choice.changes_at.least_range",
        "sensitivity to the range asked for",
    ),
    ("output.choice.changes_at.mass", "sensitivity to the mass"),
    (
        "output.choice.changes_at.motor_cost",
        "sensitivity to the cost of a motor",
    ),
    (
        "output.choice.changes_at.motor_power",
        "sensitivity to the motor's power",
    ),
    (
        "output.choice.changes_at.motor_torque",
        "sensitivity to the motor's torque",
    ),
    (
        "output.choice.changes_at.start_grade",
        "sensitivity to the grade",
    ),
    (
        "output.choice.changes_at.target_time",
        "sensitivity to the target time",
    ),
    (
        "output.choice.changes_at.weight_cost",
        "sensitivity to the weight of the cost",
    ),
    (
        "output.choice.changes_at.weight_energy",
        "sensitivity to the weight of the energy",
    ),
    (
        "output.choice.changes_at.weight_room",
        "sensitivity to the weight of the room",
    ),
    (
        "output.choice.changes_at.weight_time",
        "sensitivity to the weight of the time",
    ),
    ("output.choice.cost", "relative cost"),
    ("output.choice.differentials", "differentials"),
    ("output.choice.disconnects", "disconnects"),
    ("output.choice.energy_per_km", "energy for the distance"),
    ("output.choice.feasible", "meets the brief"),
    ("output.choice.gear_sets", "gear sets"),
    ("output.choice.half_shafts", "half shafts"),
    ("output.choice.inverters", "inverters"),
    ("output.choice.limit", "traction limit"),
    (
        "output.choice.limit_dry_earth",
        "traction limit, dry earth road",
    ),
    ("output.choice.limit_gravel", "traction limit, gravel"),
    ("output.choice.limit_ice", "traction limit, ice"),
    ("output.choice.limit_snow", "traction limit, snow"),
    ("output.choice.limit_wet", "traction limit, wet asphalt"),
    (
        "output.choice.limit_wet_concrete",
        "traction limit, wet concrete",
    ),
    (
        "output.choice.limit_wet_earth",
        "traction limit, wet earth road",
    ),
    ("output.choice.motors", "motors"),
    ("output.choice.on_pareto_front", "on the Pareto front"),
    ("output.choice.parts", "parts"),
    ("output.choice.range", "range"),
    ("output.choice.reason", "judgement"),
    ("output.choice.recommended", "recommended layout"),
    ("output.choice.room_left", "left at the tighter driven axle"),
    ("output.choice.room_share", "width left free behind"),
    ("output.choice.score", "score"),
    (
        "output.choice.start_margin",
        "acceleration left on the grade",
    ),
    ("output.choice.time_to_60_mph", "time to 60 mph"),
    ("output.choice.turns_in_place", "turns in place"),
    ("output.choice.volume", "volume of the drive units"),
    ("output.choice.yaw_moment", "yaw moment of the motors"),
    ("output.cornering.ackermann_angle", "Ackermann angle"),
    (
        "output.cornering.characteristic_speed",
        "characteristic speed",
    ),
    (
        "output.cornering.constant_radius.understeer_gradient",
        "understeer gradient of the constant-radius test, up to 2 m/s²",
    ),
    ("output.cornering.critical_speed", "critical speed"),
    (
        "output.cornering.drive_force",
        "tractive force that holds the speed",
    ),
    ("output.cornering.drive_power", "power from the battery"),
    (
        "output.cornering.lateral_acceleration",
        "lateral acceleration",
    ),
    ("output.cornering.limit", "what ends it"),
    (
        "output.cornering.limit_lateral_acceleration",
        "limit on this radius",
    ),
    (
        "output.cornering.limit_speed",
        "highest speed on this radius",
    ),
    ("output.cornering.max", "largest yaw moment"),
    ("output.cornering.sideslip_angle", "sideslip angle"),
    (
        "output.cornering.single_track.lateral_acceleration_gain",
        "lateral acceleration for each steer angle",
    ),
    (
        "output.cornering.single_track.sideslip_angle",
        "sideslip angle, single track",
    ),
    (
        "output.cornering.single_track.steer_angle",
        "steer angle, single track",
    ),
    (
        "output.cornering.single_track.yaw_rate_gain",
        "yaw rate for each steer angle",
    ),
    ("output.cornering.steer_angle", "steer angle"),
    (
        "output.cornering.step_steer.overshoot",
        "step steer: overshoot of the yaw rate",
    ),
    (
        "output.cornering.step_steer.rise_time",
        "step steer: rise time of the yaw rate",
    ),
    ("output.cornering.turn", "the turn"),
    (
        "output.cornering.understeer_gradient",
        "understeer gradient",
    ),
    (
        "output.cornering.vectoring.brakes.deceleration",
        "one brake: deceleration if nothing holds the speed",
    ),
    (
        "output.cornering.vectoring.brakes.force",
        "one brake: force at the wheel",
    ),
    (
        "output.cornering.vectoring.brakes.heat",
        "one brake: heat in it",
    ),
    (
        "output.cornering.vectoring.brakes.power",
        "one brake: power from the battery to hold the speed",
    ),
    (
        "output.cornering.vectoring.brakes.steer_angle",
        "one brake: steer angle",
    ),
    (
        "output.cornering.vectoring.brakes.verdict",
        "one brake: can it be done?",
    ),
    (
        "output.cornering.vectoring.mixed.brake_force",
        "brake in front, motors behind: force of the brake",
    ),
    (
        "output.cornering.vectoring.mixed.deceleration",
        "brake in front, motors behind: deceleration if nothing holds the speed",
    ),
    (
        "output.cornering.vectoring.mixed.heat",
        "brake in front, motors behind: heat in the brake",
    ),
    (
        "output.cornering.vectoring.mixed.motor_force",
        "brake in front, motors behind: force of each motor's wheel",
    ),
    (
        "output.cornering.vectoring.mixed.power",
        "brake in front, motors behind: power from the battery",
    ),
    (
        "output.cornering.vectoring.mixed.steer_angle",
        "brake in front, motors behind: steer angle",
    ),
    (
        "output.cornering.vectoring.mixed.verdict",
        "brake in front, motors behind: can it be done?",
    ),
    (
        "output.cornering.vectoring.motors.force",
        "two motors: force at each wheel",
    ),
    (
        "output.cornering.vectoring.motors.power",
        "two motors: power from the battery",
    ),
    (
        "output.cornering.vectoring.motors.steer_angle",
        "two motors: steer angle",
    ),
    (
        "output.cornering.vectoring.motors.verdict",
        "two motors: can it be done?",
    ),
    (
        "output.idle_drag.booster_time_share",
        "time with both axles driving",
    ),
    ("output.idle_drag.both_axles_above", "both axles drive from"),
    ("output.idle_drag.cycle_distance", "distance of the cycle"),
    ("output.idle_drag.energy_per_km", "energy"),
    ("output.idle_drag.follows_cycle", "follows the cycle"),
    ("output.idle_drag.force_at_wheels", "force at the wheels"),
    (
        "output.idle_drag.front_torque_share",
        "front share of the torque",
    ),
    (
        "output.idle_drag.idle_loss_induction",
        "loss of an idle induction motor",
    ),
    ("output.idle_drag.idle_loss_per_km", "loss in idle motors"),
    (
        "output.idle_drag.idle_loss_permanent_magnet",
        "loss of an idle motor with magnets",
    ),
    ("output.idle_drag.motor_loss", "loss in the motors now"),
    ("output.idle_drag.motor_loss_per_km", "loss in the motors"),
    ("output.idle_drag.motor_speed", "speed of the motors"),
    ("output.idle_drag.primary", "who drives"),
    ("output.idle_drag.range", "range"),
    (
        "output.idle_drag.range_lost_to_idle",
        "range lost to idle motors",
    ),
    ("output.idle_drag.road_load", "road load"),
    ("output.idle_drag.saved_by_split", "saved by the best split"),
    ("output.launch.end_speed", "speed at the end of the run"),
    (
        "output.launch.front_grip_limited_until",
        "front tyres limit until",
    ),
    ("output.launch.front_peak_slip", "largest slip, front"),
    ("output.launch.front_phases", "what limits in front"),
    (
        "output.launch.motor_energy",
        "energy from the motors' shafts, to 60 mph",
    ),
    ("output.launch.outcome", "end of the run"),
    (
        "output.launch.quarter_mile_speed",
        "speed at the quarter mile",
    ),
    ("output.launch.quarter_mile_time", "time for a quarter mile"),
    (
        "output.launch.quarter_mile_time_after_rollout",
        "time for a quarter mile, rollout left out",
    ),
    (
        "output.launch.rear_grip_limited_until",
        "rear tyres limit until",
    ),
    ("output.launch.rear_peak_slip", "largest slip, rear"),
    ("output.launch.rear_phases", "what limits behind"),
    (
        "output.launch.rollout_time",
        "time for the first foot (rollout)",
    ),
    ("output.launch.speed_at_time", "speed at the time shown"),
    ("output.launch.time_to_100_km_h", "time to 100 km/h"),
    (
        "output.launch.time_to_100_km_h_after_rollout",
        "time to 100 km/h, rollout left out",
    ),
    ("output.launch.time_to_160_km_h", "time to 160 km/h"),
    (
        "output.launch.time_to_160_km_h_after_rollout",
        "time to 160 km/h, rollout left out",
    ),
    ("output.launch.time_to_60_mph", "time to 60 mph"),
    (
        "output.launch.time_to_60_mph_after_rollout",
        "time to 60 mph, rollout left out",
    ),
    ("output.launch.tyre_heat", "heat from slip, to 60 mph"),
    (
        "output.load_transfer.drop_rear",
        "drop of the body over the rear axle",
    ),
    ("output.load_transfer.front_axle_load", "front axle load"),
    (
        "output.load_transfer.front_lift_acceleration",
        "acceleration that lifts the front axle",
    ),
    (
        "output.load_transfer.front_load_share",
        "front share of the load",
    ),
    ("output.load_transfer.heave", "heave of the CG"),
    (
        "output.load_transfer.pitch_angle",
        "pitch angle, nose down positive",
    ),
    ("output.load_transfer.rear_axle_load", "rear axle load"),
    (
        "output.load_transfer.rear_to_front_ratio",
        "rear to front load",
    ),
    (
        "output.load_transfer.rise_front",
        "rise of the body over the front axle",
    ),
    (
        "output.load_transfer.static_front_axle_load",
        "front axle load at rest on the level",
    ),
    (
        "output.load_transfer.static_rear_axle_load",
        "rear axle load at rest on the level",
    ),
    (
        "output.load_transfer.transferred_load",
        "rear axle load gained against rest on the level",
    ),
    (
        "output.load_transfer.two_to_one_acceleration",
        "acceleration at which the load is 2 : 1",
    ),
    ("output.motor_split.drive_cost", "cost of the drive units"),
    ("output.motor_split.drive_mass", "mass of the drive units"),
    (
        "output.motor_split.front_load_share_at_limit",
        "front share of the load at the limit",
    ),
    (
        "output.motor_split.front_load_share_at_rest",
        "front share of the load at rest",
    ),
    (
        "output.motor_split.like_motors_limit",
        "limit, equal torques",
    ),
    (
        "output.motor_split.limit_gained",
        "limit gained over fewer motors",
    ),
    (
        "output.motor_split.matching_acceleration",
        "acceleration at which torque and load match",
    ),
    (
        "output.motor_split.motor_power_needed",
        "power of one motor that reaches the limit",
    ),
    (
        "output.motor_split.motor_torque_needed",
        "torque of one motor that reaches the limit",
    ),
    ("output.motor_split.motors", "motors"),
    ("output.motor_split.parts", "parts"),
    (
        "output.motor_split.time_saved",
        "time saved against fewer motors",
    ),
    (
        "output.motor_split.time_to_60_mph",
        "time to 60 mph, ideal grip",
    ),
    (
        "output.motor_split.torque_front_share",
        "front share of the torque of like motors",
    ),
    ("output.motor_split.traction_limit", "traction limit"),
    (
        "output.motor_split.yaw_moment",
        "yaw moment, left against right",
    ),
    (
        "output.motor_split.yaw_moment_gained",
        "yaw moment gained over fewer motors",
    ),
    ("output.packaging.drive_volume", "volume of all drive units"),
    (
        "output.packaging.extraordinary",
        "above 16 kW/L, which the trade calls extraordinary",
    ),
    ("output.packaging.fits", "fits"),
    (
        "output.packaging.front_left_with_one",
        "left at the front with one unit",
    ),
    (
        "output.packaging.front_left_with_two",
        "left at the front with two units",
    ),
    ("output.packaging.front_room", "room at the front axle"),
    (
        "output.packaging.front_wheel_reach",
        "reach of a front wheel inward at full lock",
    ),
    (
        "output.packaging.power_density",
        "power density of the whole set",
    ),
    (
        "output.packaging.rear_left_with_one",
        "left at the rear with one unit",
    ),
    (
        "output.packaging.rear_left_with_two",
        "left at the rear with two units",
    ),
    ("output.packaging.rear_room", "room at the rear axle"),
    ("output.packaging.reason", "why"),
    (
        "output.packaging.room_left",
        "left at the tighter driven axle",
    ),
    (
        "output.packaging.swept_area",
        "area that a front wheel sweeps",
    ),
    ("output.packaging.unit_volume", "volume of one drive unit"),
    ("output.packaging.unit_width", "width of one drive unit"),
    ("output.traction.acceleration", "traction limit"),
    (
        "output.traction.front_adhesion_utilisation",
        "friction used, front",
    ),
    (
        "output.traction.front_axle_load",
        "front axle load at the limit",
    ),
    (
        "output.traction.front_lift_acceleration",
        "acceleration that lifts the front axle",
    ),
    (
        "output.traction.front_tractive_force",
        "front tractive force",
    ),
    (
        "output.traction.ideal_front_share_at_rest",
        "ideal front share at rest",
    ),
    ("output.traction.limited_by", "limited by"),
    (
        "output.traction.rear_adhesion_utilisation",
        "friction used, rear",
    ),
    (
        "output.traction.rear_axle_load",
        "rear axle load at the limit",
    ),
    ("output.traction.rear_tractive_force", "rear tractive force"),
    ("output.traction.tractive_force", "tractive force"),
    (
        "output.traction.two_to_one_acceleration",
        "acceleration at which the load is 2 : 1",
    ),
    (
        "output.turn_in_place.available_wheel_torque",
        "torque that a motor gives its wheel",
    ),
    (
        "output.turn_in_place.drift_per_turn",
        "drift downhill in one slow turn",
    ),
    (
        "output.turn_in_place.drilling_moment",
        "drilling moment of the sliding patches",
    ),
    (
        "output.turn_in_place.drilling_moment_bound",
        "drilling moment, upper bound",
    ),
    (
        "output.turn_in_place.driving_moment",
        "moment of the driven pair",
    ),
    (
        "output.turn_in_place.energy_per_turn",
        "energy for one full turn",
    ),
    (
        "output.turn_in_place.energy_per_turn_bound",
        "energy for one full turn, upper bound with drilling",
    ),
    ("output.turn_in_place.feasible", "can turn in place"),
    (
        "output.turn_in_place.friction_used_lengthwise",
        "share of the friction used lengthwise",
    ),
    (
        "output.turn_in_place.front_patch_length",
        "contact patch length, front",
    ),
    (
        "output.turn_in_place.front_tractive_force_per_wheel",
        "tractive force, one front wheel",
    ),
    (
        "output.turn_in_place.front_wheel_torque",
        "torque, one front wheel",
    ),
    (
        "output.turn_in_place.full_lock_centre_behind_front",
        "full lock: turning centre behind the front axle",
    ),
    (
        "output.turn_in_place.full_lock_centre_to_left",
        "full lock: turning centre to the left",
    ),
    (
        "output.turn_in_place.full_lock_in_place",
        "full lock: turns in place",
    ),
    (
        "output.turn_in_place.full_lock_sweep_radius",
        "full lock: circle of the front axle, radius",
    ),
    (
        "output.turn_in_place.heat_per_front_tyre",
        "sliding heat at one front tyre per turn",
    ),
    (
        "output.turn_in_place.heat_per_rear_tyre",
        "sliding heat at one rear tyre per turn",
    ),
    (
        "output.turn_in_place.holding_moment",
        "moment of the other axle, dragged sideways",
    ),
    (
        "output.turn_in_place.lateral_scrub_moment",
        "moment if all scrubbed sideways",
    ),
    (
        "output.turn_in_place.path_radius",
        "radius of the CG's path",
    ),
    (
        "output.turn_in_place.rear_patch_length",
        "contact patch length, rear",
    ),
    (
        "output.turn_in_place.rear_tractive_force_per_wheel",
        "tractive force, one rear wheel",
    ),
    (
        "output.turn_in_place.rear_wheel_torque",
        "torque, one rear wheel",
    ),
    ("output.turn_in_place.reason", "reason"),
    ("output.turn_in_place.resisting_moment", "resisting moment"),
    (
        "output.turn_in_place.spin.energy_to_180",
        "motor energy up to 180°",
    ),
    (
        "output.turn_in_place.spin.energy_to_360",
        "motor energy up to 360°",
    ),
    (
        "output.turn_in_place.spin.energy_to_90",
        "motor energy up to 90°",
    ),
    ("output.turn_in_place.spin.outcome", "spin-up"),
    (
        "output.turn_in_place.spin.steady_yaw_rate",
        "steady yaw rate",
    ),
    ("output.turn_in_place.spin.time_to_180", "time to 180°"),
    ("output.turn_in_place.spin.time_to_360", "time to 360°"),
    ("output.turn_in_place.spin.time_to_90", "time to 90°"),
    (
        "output.turn_in_place.spin.time_to_steady",
        "time until the yaw rate stays within 1 %",
    ),
    (
        "output.turn_in_place.spin.way_off",
        "CG from where it stood, after a full turn",
    ),
    (
        "output.turn_in_place.tractive_force_per_wheel",
        "tractive force per wheel, on average",
    ),
    (
        "output.turn_in_place.tread_lost_least",
        "tread lost per turn, lower end of the range",
    ),
    (
        "output.turn_in_place.tread_lost_most",
        "tread lost per turn, upper end of the range",
    ),
    (
        "output.turn_in_place.tread_lost_per_turn",
        "tread lost per turn, with an assumed wear coefficient",
    ),
    (
        "output.turn_in_place.turning_centre_behind_front_axle",
        "turning centre behind front axle",
    ),
    (
        "output.turn_in_place.turning_centre_to_left",
        "turning centre to the left of the middle",
    ),
    (
        "output.turn_in_place.wear_coefficient",
        "wear coefficient, an assumption",
    ),
    (
        "output.turn_in_place.wheel_speed_ratio",
        "wheel speed over yaw rate",
    ),
    (
        "output.turn_in_place.wheel_torque",
        "torque per wheel, on average",
    ),
    (
        "output.turn_in_place.wheel_torque_bound",
        "mean wheel torque, upper bound with drilling",
    ),
    (
        "problem.empty",
        "The scenario is empty: give at least one field, for example vehicle.base = \"esker\".",
    ),
    ("problem.field", "{0} is not a field that is known here."),
    (
        "problem.field_near",
        "{0} is not a field that is known here; the nearest one is {1}.",
    ),
    (
        "problem.kind",
        "{0} = {1} is of the wrong kind; allowed: {2}.",
    ),
    ("problem.line", "{0}, line {1}: {2}: {3}; allowed: {4}"),
    (
        "problem.missing",
        "{0} is missing: give it ({1}), or name a demo vehicle with vehicle.base.",
    ),
    ("problem.missing_plain", "{0} is missing: give it ({1})."),
    ("problem.no_answer", "{0} = {1}: {2}; allowed: {3}."),
    ("problem.not_a_number", "not a number followed by a unit"),
    ("problem.quantity", "{0} = \"{1}\": {2}; allowed: {3}."),
    ("problem.range", "{0} = {1} is out of range; allowed: {2}."),
    (
        "problem.two_readings",
        "{0} can mean {1} or {2}; write the one that is meant",
    ),
    (
        "problem.unknown_unit",
        "\"{0}\" is not a unit that is known here",
    ),
    ("problem.word", "{0} = \"{1}\" is not known; allowed: {2}."),
    ("problem.wrong_dimension", "{0} is a unit of {1}"),
    ("question.again", "Ask again"),
    ("question.another", "Try another"),
    (
        "question.axes",
        "Empty axes to draw on: {0} along, from {1} to {2}; {3} upwards, from 0 to {4}.",
    ),
    (
        "question.change",
        "Suppose that one thing changes: {0} goes from {1} to {2}. What becomes of this value? {3}",
    ),
    ("question.changed", "It goes from {0} to {1}."),
    ("question.chart", "{0} against {1}"),
    ("question.chart_points", "Points of the line: {0}."),
    (
        "question.choice.change.hint",
        "The cost counts parts. What a part is worth to you is no price.",
    ),
    (
        "question.choice.change_car.hint",
        "A grip has its place on the car, a volume its power. Ask which of the two the change touches.",
    ),
    (
        "question.choice.cost",
        "What does layout {0} cost, in the unit of the costs?",
    ),
    (
        "question.choice.cost.hint",
        "Count the parts first: a differential stands where one motor drives two wheels.",
    ),
    (
        "question.choice.limit",
        "How hard can layout {0} accelerate on this ground?",
    ),
    (
        "question.choice.limit.hint",
        "Accelerating moves load to the rear. Write what the driven axle carries then.",
    ),
    (
        "question.choice.motor_cost",
        "Layout {0} may cost {1}. What may one motor cost?",
    ),
    (
        "question.choice.motor_cost.hint",
        "Take off the cost of all other parts, then divide by the number of motors.",
    ),
    (
        "question.choice.order",
        "The motors are strong enough. Which layout starts with most to spare on a grade of {0}, which with least, and why?",
    ),
    (
        "question.choice.order.front_load",
        "F1R1, then F1, then R1. At the limit the front tyres of F1 carry more than the rear tyres of R1.",
    ),
    (
        "question.choice.order.hint",
        "Take the load of each driven axle on the grade, at the limit. Strong motors do not make tyres hold more.",
    ),
    (
        "question.choice.order.pushing",
        "R1, then F1R1, then F1. Uphill all the load is on the rear wheels.",
    ),
    (
        "question.choice.order.rear_load",
        "F1R1, then R1, then F1. At the limit the rear tyres of R1 carry more than the front tyres of F1.",
    ),
    (
        "question.choice.order.torque",
        "F1R1, then R1, then F1. Two motors give twice the torque, and the torque decides.",
    ),
    (
        "question.choice.parts",
        "How many parts does layout {0} have: motors, inverters, gear sets, half shafts, differentials and disconnects?",
    ),
    (
        "question.choice.parts.hint",
        "Three for each motor, two half shafts for each driven axle. What is left depends on the axle.",
    ),
    (
        "question.choice.power_for_volume",
        "The drive units of layout {0} may take {1} together. How much power may one motor have?",
    ),
    (
        "question.choice.power_for_volume.hint",
        "Every litre serves all of the power: add up the litres that one kilowatt takes in motor, inverter and gears.",
    ),
    (
        "question.choice.read_grade",
        "The chart is of one car with one motor behind (R1). On which grade is an acceleration of {0} left?",
    ),
    (
        "question.choice.read_grade.hint",
        "Go across from the acceleration to the line, then down to the grade. Estimate between the lines of the grid.",
    ),
    (
        "question.choice.refused",
        "What becomes of layout {0} by this brief?",
    ),
    (
        "question.choice.refused.hint",
        "First ask whether its units fit. Then look at what is asked for: which axle would do it?",
    ),
    (
        "question.choice.start",
        "Which layout starts with more to spare on a grade of {0}?",
    ),
    (
        "question.choice.start.hint",
        "The grade moves load to the rear, and so does accelerating. But where does the load lie on the level?",
    ),
    (
        "question.choice.volume",
        "Layout {0}: how large are all its drive units together?",
    ),
    (
        "question.choice.volume.hint",
        "Find the volume of one unit: motor, inverter and gears each carry the whole power.",
    ),
    ("question.close", "less than 1\u{2009}% off"),
    ("question.commit", "Commit prediction"),
    (
        "question.cornering.ackermann",
        "At walking pace, how far are the front wheels steered on this radius?",
    ),
    (
        "question.cornering.ackermann.hint",
        "No tyre slips yet: the wheels follow the circle. Wheelbase over radius, in degrees.",
    ),
    (
        "question.cornering.brake_heat",
        "One rear brake makes this yaw moment. How much heat goes into it?",
    ),
    (
        "question.cornering.brake_heat.hint",
        "One force on half a track makes the moment. Force times speed is power.",
    ),
    (
        "question.cornering.change.hint",
        "Write the value as a formula. Does what changes stand in it?",
    ),
    (
        "question.cornering.characteristic_speed",
        "At which speed does this car need twice the Ackermann angle?",
    ),
    (
        "question.cornering.characteristic_speed.hint",
        "There K·a_y is as large as L/R. Put in a_y = V²/R.",
    ),
    (
        "question.cornering.motor_force",
        "Two rear motors make this yaw moment against each other. Which force does each of their wheels push with?",
    ),
    (
        "question.cornering.motor_force.hint",
        "Each of the two forces has half the track as its arm, and both turn the car the same way.",
    ),
    (
        "question.cornering.needed_speed",
        "At which speed is the lateral acceleration on this radius {0}?",
    ),
    (
        "question.cornering.needed_speed.hint",
        "V²/R is the lateral acceleration. Put g in as 9.81 m/s².",
    ),
    (
        "question.cornering.read_speed",
        "The chart is of one turn. At which speed does it ask for a lateral acceleration of {0}?",
    ),
    (
        "question.cornering.read_speed.hint",
        "Go across from the acceleration to the line, then down to the speed. Twice the speed asks for four times the acceleration.",
    ),
    (
        "question.cornering.speed_lost",
        "One rear brake makes this yaw moment and nothing holds the speed. How hard does the car slow down?",
    ),
    (
        "question.cornering.speed_lost.hint",
        "Find the force of the brake from the moment; the whole car has to be slowed by it.",
    ),
    (
        "question.cornering.steer",
        "Which steer angle does the single track need for this turn?",
    ),
    (
        "question.cornering.steer.hint",
        "The Ackermann angle, and on top of it the understeer gradient times the lateral acceleration.",
    ),
    (
        "question.cornering.turn",
        "Can the car hold this turn, and if not, what ends it?",
    ),
    (
        "question.cornering.turn.hint",
        "Compare V²/R with the friction. Then: which axle has less to spare, and does a wheel go light?",
    ),
    (
        "question.cornering.understeer_gradient",
        "What is this car's understeer gradient?",
    ),
    (
        "question.cornering.understeer_gradient.hint",
        "For each axle: its load at rest over the cornering stiffness of its two tyres. Front less rear, for each g.",
    ),
    (
        "question.cornering.wrong_line.hint",
        "Check each line by itself. What must happen to it when the speed or the radius doubles?",
    ),
    ("question.far", "far too much or too little"),
    ("question.field", "Your prediction: {0}"),
    ("question.front_axle", "the front axle"),
    ("question.given", "Given"),
    ("question.height", "{0} at {1}"),
    ("question.hint", "Hint"),
    (
        "question.idle_drag.change.hint",
        "Ask which loss the change touches: copper, iron, bearings, or the road.",
    ),
    (
        "question.idle_drag.idle_induction",
        "An induction motor without current turns along. How much does it lose at the given speed?",
    ),
    (
        "question.idle_drag.idle_induction.hint",
        "Without a field only bearings and air are left; one goes with the speed, the other with its cube.",
    ),
    (
        "question.idle_drag.idle_magnet",
        "A motor with permanent magnets makes no torque and turns along. How much does it lose at the given speed?",
    ),
    (
        "question.idle_drag.idle_magnet.hint",
        "Each share holds at the base speed. Above it the field is weaker, and holding it down costs copper.",
    ),
    (
        "question.idle_drag.loses_more",
        "One motor alone drives the car at a steady speed. Which kind loses more?",
    ),
    (
        "question.idle_drag.loses_more.hint",
        "One must make its field, the other must hold its field down at speed.",
    ),
    (
        "question.idle_drag.motor_speed",
        "How fast does a motor of this car turn at the given speed?",
    ),
    (
        "question.idle_drag.motor_speed.hint",
        "The wheel turns at speed over radius; the motor turns faster by the ratio.",
    ),
    (
        "question.idle_drag.range",
        "One motor behind drives the car at a steady speed. How far does the battery last?",
    ),
    (
        "question.idle_drag.range.hint",
        "Find the energy for a distance first: road load, losses, other power.",
    ),
    (
        "question.idle_drag.read_speed",
        "The chart is of one car. At which speed does its idle permanent-magnet motor lose {0}?",
    ),
    (
        "question.idle_drag.read_speed.hint",
        "Go across from the power to the line, then down to the speed. Estimate between the lines of the grid.",
    ),
    (
        "question.idle_drag.road_load",
        "How large is the road load of this car at the given speed?",
    ),
    (
        "question.idle_drag.road_load.hint",
        "Air drag goes with the square of the speed; rolling resistance is a share of the weight.",
    ),
    (
        "question.idle_drag.sketch_idle_loss",
        "Sketch how the loss of an idle permanent-magnet motor goes with the road speed, from {0} to {1}.",
    ),
    (
        "question.idle_drag.sketch_idle_loss.hint",
        "One part of the loss in the iron grows as the speed, another as its square; bearings add theirs.",
    ),
    (
        "question.idle_drag.speed_of_loss",
        "At which speed does an idle motor with permanent magnets lose {0}?",
    ),
    (
        "question.idle_drag.speed_of_loss.hint",
        "The loss rises with speed a little faster than in proportion.",
    ),
    (
        "question.idle_drag.steady_energy",
        "One motor behind drives the car at a steady speed. How much energy does it take for a kilometre?",
    ),
    (
        "question.idle_drag.steady_energy.hint",
        "A force is an energy for a distance. Add the losses and the other power, divided by the speed.",
    ),
    (
        "question.idle_drag.who_drives",
        "Layout {0} at a steady speed, with motors as given. Which axle drives for the least loss?",
    ),
    (
        "question.idle_drag.who_drives.hint",
        "Ask of each axle what it loses while it makes no torque, and what waking it would add.",
    ),
    (
        "question.idle_drag.wrong_line.hint",
        "Check each line by itself: its unit, and whether it grows when it should.",
    ),
    ("question.inside", "That is inside the tolerance of {0}."),
    (
        "question.later",
        "The figure, the numbers and the working appear after your prediction.",
    ),
    (
        "question.launch.after_rollout",
        "One motor behind (R1), with traction control: which time to 60 mph is stated if the clock starts after the first foot?",
    ),
    (
        "question.launch.after_rollout.hint",
        "Find the time from rest and the time of the first foot, and take the difference.",
    ),
    (
        "question.launch.change.hint",
        "Which half of the run does the changed value belong to: the one that grip limits, or the one that power limits?",
    ),
    (
        "question.launch.motor_energy",
        "One motor on each axle (F1R1), with traction control: how much energy do the motors give up to 60 mph?",
    ),
    (
        "question.launch.motor_energy.hint",
        "Begin with the kinetic energy of the car. Wheels and rotors, slip, gears, air and road take some more.",
    ),
    (
        "question.launch.needed_power",
        "One motor on each axle (F1R1), with traction control: how much power must each motor have for a time to 60 mph of {0}?",
    ),
    (
        "question.launch.needed_power.hint",
        "Once the motors limit, energy grows with the time: the kinetic energy at 60 mph over both motors' power is about the time that this part takes.",
    ),
    (
        "question.launch.order",
        "F1R1, F2 and R2 have two like motors each. Which is first at 60 mph, which last, and why?",
    ),
    (
        "question.launch.order.front_heavy",
        "F1R1, then F2, then R2. The front axle carries so much that it holds more than the rear one even while the car accelerates.",
    ),
    (
        "question.launch.order.grip_alone",
        "F1R1, then R2, then F2. The tyres limit R2 all the way to 60 mph: its power has no part in the time.",
    ),
    (
        "question.launch.order.hint",
        "Find the force that the driven tyres hold, and the speed at which the motors' power gives no more than that force. Is it above 60 mph?",
    ),
    (
        "question.launch.order.pushing",
        "R2, then F1R1, then F2. Wheels that push hold more than wheels that pull.",
    ),
    (
        "question.launch.order.then_power",
        "F1R1, then R2, then F2. The tyres limit R2 at first, then its motors do.",
    ),
    (
        "question.launch.quarter_after_rollout",
        "One motor behind (R1), with traction control: which time for the quarter mile is stated if the clock starts after the first foot?",
    ),
    (
        "question.launch.quarter_after_rollout.hint",
        "The first foot takes a few tenths, hardly more. Find the long time first.",
    ),
    (
        "question.launch.quarter_speed",
        "One motor on each axle (F1R1), with traction control: how fast is the car after a quarter mile?",
    ),
    (
        "question.launch.quarter_speed.hint",
        "With constant power the third power of the speed grows with the distance.",
    ),
    (
        "question.launch.quarter_time",
        "One motor on each axle (F1R1), with traction control: how long does a quarter mile take?",
    ),
    (
        "question.launch.quarter_time.hint",
        "Most of the way goes by while power limits. From there, energy is power times time.",
    ),
    (
        "question.launch.read_time",
        "The chart is of one launch. When does the car reach {0}?",
    ),
    (
        "question.launch.read_time.hint",
        "Go across from the speed to the line, then down to the time. Estimate between the lines of the grid.",
    ),
    (
        "question.launch.rollout",
        "One motor on each axle (F1R1), with traction control: how long does the first foot take?",
    ),
    (
        "question.launch.rollout.hint",
        "One foot is 0.3048 m. The acceleration is not there at once: tyres need a little way, springs a little time.",
    ),
    (
        "question.launch.time_to_100",
        "One motor behind (R1), with traction control: how long does the car take from rest to 100 km/h?",
    ),
    (
        "question.launch.time_to_100.hint",
        "While grip limits, the acceleration is the traction limit of rear drive.",
    ),
    (
        "question.launch.time_to_160",
        "One motor on each axle (F1R1), with traction control: how long does the car take from rest to 160 km/h?",
    ),
    (
        "question.launch.time_to_160.hint",
        "Grip limits only at the beginning. After that the energy that the motors give in a second is their power.",
    ),
    (
        "question.launch.time_to_60",
        "One motor on each axle (F1R1), with traction control: how long does the car take from rest to 60 mph?",
    ),
    (
        "question.launch.time_to_60.hint",
        "Split the run: first friction sets the force, then power does. Find the speed at which they meet.",
    ),
    ("question.less", "it becomes smaller"),
    ("question.line_right", "right"),
    ("question.line_yours", "your line"),
    ("question.lines", "The true line: {0}. Your line: {1}."),
    (
        "question.load_transfer.change.hint",
        "Look for the changed value among the symbols of the load equation.",
    ),
    (
        "question.load_transfer.front_load",
        "The car accelerates at {0}; a negative value is braking. How large is its front axle load?",
    ),
    (
        "question.load_transfer.front_load.hint",
        "In braking the inertial force points forward. Take moments about the rear contact patches.",
    ),
    (
        "question.load_transfer.front_share",
        "The car accelerates at {0}. Which share of the load is on the front axle?",
    ),
    (
        "question.load_transfer.front_share.hint",
        "Begin with the share at rest. The load that moves, over the weight, is the change.",
    ),
    (
        "question.load_transfer.heavier_axle",
        "The car accelerates at {0}; a negative value is braking. Which axle carries more?",
    ),
    (
        "question.load_transfer.heavier_axle.hint",
        "Two things decide: the loads at rest, and the load that the acceleration moves. Find each by itself.",
    ),
    (
        "question.load_transfer.lift_height",
        "How high must the centre of gravity (CG) be for the front axle to leave the ground at {0}?",
    ),
    (
        "question.load_transfer.lift_height.hint",
        "When the front axle carries nothing, weight and inertial force together must point at the rear contact patch.",
    ),
    (
        "question.load_transfer.ratio_acceleration",
        "At which acceleration does the rear axle carry {0} times the load of the front axle?",
    ),
    (
        "question.load_transfer.ratio_acceleration.hint",
        "Both loads are straight lines in the acceleration, and their sum stays the weight.",
    ),
    (
        "question.load_transfer.read_load",
        "The chart is of one car. How much does its rear axle carry at {0}?",
    ),
    (
        "question.load_transfer.read_load.hint",
        "Go up from the acceleration to the line, then across to the load. Estimate between the lines of the grid.",
    ),
    (
        "question.load_transfer.rear_load",
        "The car accelerates at {0}. How large is its rear axle load?",
    ),
    (
        "question.load_transfer.rear_load.hint",
        "The inertial force acts at CG height. Its moment must be balanced by axle loads that are one wheelbase apart.",
    ),
    (
        "question.load_transfer.sketch_rear_load",
        "Sketch how the rear axle load goes with the acceleration, from {0} to {1}.",
    ),
    (
        "question.load_transfer.sketch_rear_load.hint",
        "At rest the place of the CG divides the weight. Each further step of acceleration moves as much load as the last one.",
    ),
    (
        "question.load_transfer.transfer_acceleration",
        "At which acceleration have {0} of load left the front axle for the rear one?",
    ),
    (
        "question.load_transfer.transfer_acceleration.hint",
        "The transferred load is in proportion to the acceleration.",
    ),
    (
        "question.load_transfer.transferred",
        "The car accelerates at {0}. How much load has left the front axle for the rear one?",
    ),
    (
        "question.load_transfer.transferred.hint",
        "The couple of inertial force and tractive force is balanced by a couple of axle loads.",
    ),
    (
        "question.load_transfer.two_to_one",
        "At which acceleration does the rear axle carry twice the load of the front axle?",
    ),
    (
        "question.load_transfer.two_to_one.hint",
        "Then the front axle carries a third of the weight. Find what has to leave it.",
    ),
    (
        "question.load_transfer.wrong_line.hint",
        "Both axles together carry the weight, also while the car accelerates. Check units too.",
    ),
    ("question.more", "it becomes larger"),
    (
        "question.motor_split.change.hint",
        "The match is a matter of geometry. Ask whether the changed value is a part of it.",
    ),
    (
        "question.motor_split.like_limit",
        "Layout {0}, and every motor gives the same torque: what is the largest acceleration before a tyre slips?",
    ),
    (
        "question.motor_split.like_limit.hint",
        "The split of the force is fixed by the number of motors. Find for each axle where its friction is used up; the lower value counts.",
    ),
    (
        "question.motor_split.match_height",
        "How high must the centre of gravity (CG) be for F1R2 to match torque and load at {0}?",
    ),
    (
        "question.motor_split.match_height.hint",
        "A higher CG moves more load at the same acceleration. The load that has to move is fixed.",
    ),
    (
        "question.motor_split.match_place",
        "How far behind the front axle must the centre of gravity (CG) be for F1R2 to match torque and load at {0}?",
    ),
    (
        "question.motor_split.match_place.hint",
        "Work backward: at that acceleration a third of the load is in front. Add what has moved.",
    ),
    (
        "question.motor_split.matching",
        "One motor in front and two like ones behind (F1R2): at which acceleration do the shares of torque and load match?",
    ),
    (
        "question.motor_split.matching.hint",
        "Three like motors give a third of the torque in front. At which acceleration is a third of the load in front?",
    ),
    (
        "question.motor_split.order",
        "Every motor gives the same torque. Which layout has the highest limit before a tyre slips, which the lowest, and why?",
    ),
    (
        "question.motor_split.order.count",
        "F1R2, then F2R1, then F1R1. Three motors always hold more than two.",
    ),
    (
        "question.motor_split.order.front_heavy",
        "F1R1, then F2R1, then F1R2. At the limit a half of the torque in front fits the load best, and two thirds better than a third.",
    ),
    (
        "question.motor_split.order.half",
        "F1R1, then F1R2, then F2R1. At the limit a half of the torque in front fits the load best, and a third better than two thirds.",
    ),
    (
        "question.motor_split.order.hint",
        "The front shares of the torque are 1/2, 1/3 and 2/3. Compare them with the front share of the load at the limit.",
    ),
    (
        "question.motor_split.order.rest",
        "F1R1, then F1R2, then F2R1. What fits is decided by the load at rest, whatever the acceleration.",
    ),
    (
        "question.motor_split.order.third",
        "F1R2, then F1R1, then F2R1. At the limit a third of the torque in front fits the load better than a half.",
    ),
    (
        "question.motor_split.power_needed",
        "Like motors, one on each axle (F1R1): how much power must each be able to give to stay at the traction limit up to {0}?",
    ),
    (
        "question.motor_split.power_needed.hint",
        "Power is force times speed. Which axle asks for more force?",
    ),
    (
        "question.motor_split.read_friction",
        "The chart is of one car with like motors, one in front and two behind (F1R2). How much friction does it need to accelerate at {0}?",
    ),
    (
        "question.motor_split.read_friction.hint",
        "Go across from the acceleration to the line, then down to the friction. Where the line bends, the other axle begins to limit.",
    ),
    (
        "question.motor_split.share_at_limit",
        "One motor on each axle (F1R1), each giving what its axle can use: which share of the load is in front at the traction limit?",
    ),
    (
        "question.motor_split.share_at_limit.hint",
        "With all wheels at their limit the acceleration hardly depends on the layout. Find it, then the load that it moves.",
    ),
    (
        "question.motor_split.share_at_rest",
        "Which share of the load is in front when the car stands?",
    ),
    (
        "question.motor_split.share_at_rest.hint",
        "Take moments about the rear axle.",
    ),
    (
        "question.motor_split.torque_needed",
        "Like motors, one on each axle (F1R1): how much torque must each be able to give to reach the traction limit?",
    ),
    (
        "question.motor_split.torque_needed.hint",
        "The more heavily loaded axle sets it. Go from the force at the ground through wheel radius, gears and losses to the motor.",
    ),
    (
        "question.motor_split.two_or_three",
        "Every motor gives the same torque. Which has the higher limit here: two motors (F1R1) or three (F1R2)?",
    ),
    (
        "question.motor_split.two_or_three.hint",
        "On slippery ground little load moves, so the split at rest counts. Where the tyres grip, the split under acceleration does.",
    ),
    (
        "question.motor_split.wrong_line.hint",
        "Ask of each line what would become of it if the centre of gravity were higher, or farther back.",
    ),
    (
        "question.nine_heights",
        "a line over the whole axis, through its nine handles",
    ),
    (
        "question.nothing_drawn",
        "No line has been drawn yet. Draw {0}.",
    ),
    ("question.order", "order and reason"),
    ("question.outside", "That is outside the tolerance of {0}."),
    (
        "question.packaging.change.hint",
        "Ask which parts the value is made of, and which of them the change touches.",
    ),
    (
        "question.packaging.drive_volume",
        "Layout {0}: how large are all its drive units together?",
    ),
    (
        "question.packaging.drive_volume.hint",
        "Like motors: find one unit, then count them.",
    ),
    (
        "question.packaging.fits",
        "Layout {0}: do its drive units fit, and where not?",
    ),
    (
        "question.packaging.fits.hint",
        "Find the width of one unit and the room at each axle. Two units need a gap between them.",
    ),
    (
        "question.packaging.front_reach",
        "How far does a front wheel reach inward of its own middle at full lock?",
    ),
    (
        "question.packaging.front_reach.hint",
        "From above the wheel is a rectangle. Turn it and look where its inner corner goes.",
    ),
    (
        "question.packaging.front_room",
        "How much room is there for drive units between the front wheels?",
    ),
    (
        "question.packaging.front_room.hint",
        "On each side the reach of the wheel, the clearance, and the rails and suspension go off.",
    ),
    (
        "question.packaging.needed_density",
        "Which power density must the motor alone have for a drive unit of {0}?",
    ),
    (
        "question.packaging.needed_density.hint",
        "Take the volumes of inverter and gears off first. What is left is the motor's.",
    ),
    (
        "question.packaging.power_density",
        "What is the power density of the whole set?",
    ),
    (
        "question.packaging.power_density.hint",
        "It is less than the smallest of the three. Take any power and add up volumes.",
    ),
    (
        "question.packaging.read_angle",
        "The chart is of one car. How far may its front wheels be steered so that {0} of room is left between them?",
    ),
    (
        "question.packaging.read_angle.hint",
        "Go across from the room to the line, then down to the angle. Estimate between the lines of the grid.",
    ),
    (
        "question.packaging.steer_limit",
        "How far may the front wheels be steered so that {0} of room is left between them?",
    ),
    (
        "question.packaging.steer_limit.hint",
        "From the room follows the reach that a wheel may have; the angle follows from the reach.",
    ),
    (
        "question.packaging.unit_volume",
        "How large is one drive unit: motor, inverter, gears and differential together?",
    ),
    (
        "question.packaging.unit_volume.hint",
        "Each part carries the whole power, so each takes its own volume. Which of power density and volume may be added?",
    ),
    (
        "question.packaging.unit_width",
        "How wide is the outer box of a drive unit?",
    ),
    (
        "question.packaging.unit_width.hint",
        "First the volume of the parts, then that of the box they lie in, then its length and height.",
    ),
    (
        "question.packaging.wider_axle",
        "Which axle has more room for drive units?",
    ),
    (
        "question.packaging.wider_axle.hint",
        "Two things decide: the track width, and how far the wheels reach inward.",
    ),
    (
        "question.packaging.wrong_line.hint",
        "Ask of each line what takes room, and how often it is there.",
    ),
    ("question.rear_axle", "the rear axle"),
    ("question.same", "it stays the same"),
    (
        "question.sketch_how",
        "Draw the line with a pen, the mouse or a finger, or move its nine handles with the arrow keys.",
    ),
    (
        "question.spot",
        "Here is a solution for: {0}. One line has an error, and the lines after it are computed on from there. Which line is it?",
    ),
    ("question.spotted", "Line {0} should be: {1}. {2}"),
    (
        "question.tolerance",
        "Right is a value within {0} of the answer.",
    ),
    (
        "question.tolerance_find",
        "Right is a value that comes within {0} of what is asked.",
    ),
    (
        "question.tolerance_line",
        "Right is a line that is on average no further off than {0} of the largest true value.",
    ),
    ("question.too_little", "{0} too little"),
    ("question.too_much", "{0} too much"),
    (
        "question.traction.change.hint",
        "Ask which axles drive, and whether the change gives them more load, less, or the same.",
    ),
    (
        "question.traction.faster_drive",
        "One motor in front (F1) or one behind (R1): which can accelerate harder here?",
    ),
    (
        "question.traction.faster_drive.hint",
        "Two things decide: what each axle carries at rest, and what acceleration does to that load.",
    ),
    (
        "question.traction.force",
        "Layout {0}: how large is the tractive force at the traction limit?",
    ),
    (
        "question.traction.force.hint",
        "Friction times the load of the driven axles, at the limit and not at rest.",
    ),
    (
        "question.traction.ideal_share",
        "At rest, which share of the torque at the front axle would use all tyres alike?",
    ),
    (
        "question.traction.ideal_share.hint",
        "Tyres are used alike when the force is shared as the load is.",
    ),
    (
        "question.traction.limit",
        "Layout {0}: what is the largest acceleration that its tyres allow?",
    ),
    (
        "question.traction.limit.hint",
        "The load of the driven axle depends on the very acceleration that is asked for. Write the force as friction times that load, and solve.",
    ),
    (
        "question.traction.needed_friction",
        "Layout {0}: which peak friction must the ground offer for an acceleration of {1}?",
    ),
    (
        "question.traction.needed_friction.hint",
        "Find the load of the driven axle at that acceleration. The force over that load is the friction that it needs.",
    ),
    (
        "question.traction.one_side",
        "The friction is {0} on the left and {1} on the right. One motor with an open differential drives the rear axle (R1): what is the largest acceleration?",
    ),
    (
        "question.traction.one_side.hint",
        "An open differential gives both wheels the same torque. Which wheel sets it?",
    ),
    (
        "question.traction.order",
        "Which layout has the highest traction limit here, which the lowest, and why? Each motor gives the stated torque.",
    ),
    (
        "question.traction.order.front_heavy",
        "F1R1, then F1, then R1. The tyres limit F1 and R1, and the front ones carry more even at the limit.",
    ),
    (
        "question.traction.order.hint",
        "For each driven axle find two forces: what its tyres hold at the limit, and what its motor gives. The smaller one counts.",
    ),
    (
        "question.traction.order.motor",
        "F1R1, then R1, then F1. R1 is limited by its motor, F1 by its tyres.",
    ),
    (
        "question.traction.order.pushing",
        "R1, then F1R1, then F1. Wheels that push hold more than wheels that pull.",
    ),
    (
        "question.traction.order.tyres",
        "F1R1, then R1, then F1. The tyres limit R1 and F1, and the rear ones carry more at the limit.",
    ),
    (
        "question.traction.read_friction",
        "The chart is of one car with one motor behind (R1). How much friction does it need to accelerate at {0}?",
    ),
    (
        "question.traction.read_friction.hint",
        "Go across from the acceleration to the line, then down to the friction. Estimate between the lines of the grid.",
    ),
    (
        "question.traction.rear_load",
        "One motor drives the rear axle (R1). How large is the rear axle load at the traction limit?",
    ),
    (
        "question.traction.rear_load.hint",
        "Find the limit first: it sets the load, and the load sets the limit.",
    ),
    (
        "question.traction.sketch_limit",
        "Layout {0}: sketch how the largest acceleration goes with the coefficient of friction, from {1} to {2}.",
    ),
    (
        "question.traction.sketch_limit.hint",
        "Load that moves onto the driven axle lets it push more, and load that moves away less. In the end the motor may have no more torque.",
    ),
    (
        "question.traction.uphill",
        "Layout {0} on a grade of {1}: what is the largest acceleration that its tyres allow?",
    ),
    (
        "question.traction.uphill.hint",
        "The slope moves load to the rear axle even at rest, and takes a part of the force for itself.",
    ),
    (
        "question.traction.what_limits",
        "Layout F1R1 with a fixed split: the front axle makes {0} of the tractive force. What limits the acceleration?",
    ),
    (
        "question.traction.what_limits.hint",
        "Compare the front share of the force with the front share of the load at the limit, not at rest.",
    ),
    (
        "question.traction.wrong_line.hint",
        "The last line must give the friction of the ground, because the tyres slip. From which line on does it go another way?",
    ),
    (
        "question.turn_in_place.change.hint",
        "Write the value as a product: friction, load, a share that rests on the shape of the car, a lever. Which of them changes?",
    ),
    (
        "question.turn_in_place.drift",
        "On which grade does the car drift {0} downhill in one slow full turn in place?",
    ),
    (
        "question.turn_in_place.drift.hint",
        "All the friction is already used. A push from the side only turns its direction: it answers in proportion to the drift over the sliding.",
    ),
    (
        "question.turn_in_place.drilling",
        "How large is the drilling moment of all four patches at most?",
    ),
    (
        "question.turn_in_place.drilling.hint",
        "The patch of a wheel has the area N/p. The bound is a third of the friction times the root of that area.",
    ),
    (
        "question.turn_in_place.energy",
        "How much energy goes into tyres and ground in one full turn in place?",
    ),
    (
        "question.turn_in_place.energy.hint",
        "Friction force times the way that each patch slides. The way is longer than the circle that the wheels follow, because they also spin.",
    ),
    (
        "question.turn_in_place.feasible",
        "Layout {0}: can it turn the car in place here, and why?",
    ),
    (
        "question.turn_in_place.feasible.hint",
        "First: which axles can drive their two wheels against each other? Then: what must those wheels drag with them?",
    ),
    (
        "question.turn_in_place.harder_axle",
        "Which axle's wheels must push harder while the car turns in place?",
    ),
    (
        "question.turn_in_place.harder_axle.hint",
        "More load means more friction, and the turning centre lies nearer to the heavier axle. What does that do to the direction of its slide?",
    ),
    (
        "question.turn_in_place.lengthwise",
        "While the car turns in place with all four wheels driven, which share of the friction points along the wheels?",
    ),
    (
        "question.turn_in_place.lengthwise.hint",
        "Look at the car from above: wheelbase, track width and the diagonal between two wheels make a triangle.",
    ),
    (
        "question.turn_in_place.needed_friction",
        "At which sliding friction does turning in place ask for a mean torque of {0} at each wheel?",
    ),
    (
        "question.turn_in_place.needed_friction.hint",
        "The torque grows in proportion to the friction. Find it for one value first.",
    ),
    (
        "question.turn_in_place.read_torque",
        "The chart is of one car that turns in place. What torque does it take at each wheel, on average, where the sliding friction is {0}?",
    ),
    (
        "question.turn_in_place.read_torque.hint",
        "Go up from the friction to the line, then across to the torque. Estimate between the lines of the grid.",
    ),
    (
        "question.turn_in_place.tread",
        "Take the wear coefficient as {0}. How much tread do the four tyres together lose in one full turn?",
    ),
    (
        "question.turn_in_place.tread.hint",
        "First the energy of the turn. Rubber weighs 1150 kg/m³.",
    ),
    (
        "question.turn_in_place.wheel_torque",
        "The car turns in place with all four wheels driven. How large is the mean torque at a wheel?",
    ),
    (
        "question.turn_in_place.wheel_torque.hint",
        "Every patch uses all its friction, but only the part that points along the wheel asks for torque.",
    ),
    (
        "question.turn_in_place.wrong_line.hint",
        "Look at each line with its place on the car: which axle, how many wheels, which lever?",
    ),
    (
        "question.unit",
        "A number alone is taken in {0}; other units are read as well.",
    ),
    ("question.verdict", "You said {0}. It is {1}: {2}."),
    (
        "question.verdict_find",
        "You said {0}. What comes of it: {1}, {2} instead of {3}, {4}. The answer is {5}.",
    ),
    (
        "question.verdict_line",
        "On average your line is {0} off. It is furthest off at {1}: you drew {2}, right is {3}.",
    ),
    (
        "question.verdict_nothing",
        "You said {0}. With it the car cannot be as the question says. The answer is {1}.",
    ),
    ("question.verdict_right", "You said: {0}. That is right."),
    ("question.verdict_wrong", "You said: {0}. Right is: {1}."),
    (
        "question.why.all_tyres",
        "μ·g needs the friction of all four tyres. Here one axle drives, and it carries a part of the weight.",
    ),
    (
        "question.why.arm",
        "The inertial force has the arm h, and the axle loads balance it over the wheelbase L.",
    ),
    (
        "question.why.arm_axle",
        "b is the distance from the centre of gravity to the rear axle: what a leaves of the wheelbase.",
    ),
    (
        "question.why.axle",
        "An axle carries the more, the farther the centre of gravity is from the other axle: in the front load stands b.",
    ),
    (
        "question.why.base_speed",
        "Power is torque times speed, so the base speed is power over torque.",
    ),
    (
        "question.why.both_wheels",
        "Both wheels of the axle take room, the left one and the right one.",
    ),
    (
        "question.why.box_fill",
        "A drive unit does not fill its box: the box is larger than the volume of what is in it.",
    ),
    (
        "question.why.field",
        "Above the base speed the field is weakened: it falls as the speed rises.",
    ),
    (
        "question.why.front_sign",
        "Acceleration takes load from the front axle, and with it force: the denominator is 1 + μ·h/L.",
    ),
    (
        "question.why.gearing",
        "The gears let the motor turn i times as fast as the wheel.",
    ),
    (
        "question.why.geometry",
        "The front wheels are steered by the wheelbase over the radius of the path, not over its diameter.",
    ),
    (
        "question.why.gradient",
        "A slip angle of the front tyres asks for more steering, one of the rear tyres for less.",
    ),
    (
        "question.why.height",
        "A higher centre of gravity moves more load, so the match comes at a lower acceleration: h divides.",
    ),
    (
        "question.why.lever",
        "Torque is force times its lever, the radius of the wheel.",
    ),
    (
        "question.why.magnet",
        "A magnet cannot be switched off: its field moves through the iron also when the motor gives no torque.",
    ),
    (
        "question.why.mass",
        "A mass is no force. The weight is the mass times g.",
    ),
    (
        "question.why.mean",
        "A mean of two forces is half their sum.",
    ),
    (
        "question.why.ratio",
        "The rear axle is asked about, so its load stands above the line.",
    ),
    (
        "question.why.side",
        "When the car accelerates, load goes to the rear axle and leaves the front one.",
    ),
    (
        "question.why.slide_arm",
        "The rear patches lie L − x behind the turning centre; x is the way to the front ones.",
    ),
    (
        "question.why.square",
        "The lateral acceleration grows with the square of the speed.",
    ),
    (
        "question.why.static",
        "The share of the torque follows from the count of the motors, not from the load at rest.",
    ),
    (
        "question.why.two_units",
        "Two drive units take twice the width of one.",
    ),
    (
        "question.why.two_wheels",
        "Two wheels share the load of the axle: each holds with half of it.",
    ),
    (
        "question.why.understeer",
        "Where the understeer gradient is above zero, more steering is needed at speed, not less.",
    ),
    (
        "question.why.whole_unit",
        "Inverter and gears take room beside the motor.",
    ),
    ("question.wrong_line", "line with the error"),
    ("reason.at_full_lock", "The wheels are at full lock."),
    ("reason.both_always", "both axles always share"),
    (
        "reason.both_too_narrow",
        "both axles are too narrow for their units",
    ),
    ("reason.cannot_start_on_grade", "cannot start on the grade"),
    ("reason.cannot_turn_in_place", "cannot turn in place"),
    (
        "reason.cannot_vector_torque",
        "no axle has a motor per wheel",
    ),
    ("reason.does_not_fit", "its drive units do not fit"),
    (
        "reason.drive_too_weak",
        "The motors cannot hold this speed.",
    ),
    ("reason.front_and_rear_slip", "front and rear tyres slip"),
    ("reason.front_first", "front axle first, rear if it pays"),
    ("reason.front_lift", "front axle lifts"),
    (
        "reason.front_slides",
        "The front tyres have no more grip: the car leaves its path outwards.",
    ),
    ("reason.front_slip", "front tyres slip"),
    (
        "reason.front_too_narrow",
        "the front axle is too narrow for its units",
    ),
    ("reason.launch_air_lifts", "The air lifts the front wheels."),
    ("reason.launch_done", "Every mark was passed."),
    (
        "reason.launch_no_grip",
        "The tyres cannot hold what it takes to move the car here.",
    ),
    (
        "reason.launch_time_over",
        "The time that is simulated, two minutes, ran out.",
    ),
    (
        "reason.launch_too_weak",
        "The motors are too weak to move the car here.",
    ),
    ("reason.launch_top_speed", "The car goes no faster."),
    ("reason.meets_brief", "meets the brief"),
    ("reason.misses_target_time", "takes too long to 60 mph"),
    ("reason.motor_torque", "motors have no more torque"),
    (
        "reason.motor_torque_too_small",
        "The motors give less torque than the tyres resist with.",
    ),
    (
        "reason.no_counter_rotation",
        "No axle can drive its two wheels against each other: one motor turns both the same way.",
    ),
    (
        "reason.no_end",
        "Nothing ends it as far as it was computed.",
    ),
    ("reason.one_axle", "one axle drives"),
    (
        "reason.pair_holds_itself",
        "The driven pair must also hold its own axle against the side force; what is left of its friction does not turn the car in place.",
    ),
    ("reason.range_too_short", "does not go far enough"),
    ("reason.rear_first", "rear axle first, front if it pays"),
    (
        "reason.rear_slides",
        "The rear tyres have no more grip: the car swings round.",
    ),
    ("reason.rear_slip", "rear tyres slip"),
    (
        "reason.rear_too_narrow",
        "the rear axle is too narrow for its units",
    ),
    (
        "reason.sides_too_different",
        "The sides grip so differently that the turning centre lies outside the wheels.",
    ),
    (
        "reason.spin_drifts",
        "It turns, and it drifts downhill all the while.",
    ),
    (
        "reason.spin_leaves_place",
        "It turns about a point that is not between its wheels, and goes off.",
    ),
    (
        "reason.spin_never_settles",
        "It is not steady within the minute that is simulated.",
    ),
    (
        "reason.spin_never_starts",
        "It never starts: the tyres hold against the motors.",
    ),
    (
        "reason.spin_settles",
        "It spins up to a steady turn in place.",
    ),
    ("reason.tips_over", "The car tips over."),
    ("reason.turn_held", "The turn is held."),
    (
        "reason.undriven_axle_holds",
        "The driven pair cannot drag the other axle sideways; with its wheels spinning the car only swings about that axle.",
    ),
    ("reason.units_fit", "every drive unit fits"),
    ("reason.way_beyond_grip", "The tyres cannot hold it."),
    (
        "reason.way_beyond_motors",
        "The motors are too weak for it.",
    ),
    (
        "reason.way_needs_a_pair",
        "It takes a motor for each wheel of this axle, and this layout has none.",
    ),
    ("reason.way_no_turn", "The turn itself cannot be held."),
    ("reason.way_possible", "Tyres and machines can do it."),
    (
        "reason.wheel_spins",
        "The inner driven wheel carries too little load and spins.",
    ),
    (
        "reason.wheels_driven_apart",
        "Motors drive the wheels of each side against the other and have the torque for it.",
    ),
    (
        "reason.wheels_driven_apart_torque_unknown",
        "Motors drive the wheels of each side against the other; whether they have the torque was not asked.",
    ),
    ("script.copied", "Copied."),
    ("script.refused", "This page or browser does not allow it."),
    (
        "script.restarted",
        "This element stopped and was started again with your values.",
    ),
    ("script.saved", "Saved as {0}."),
    (
        "script.scenario",
        "The scenario could not be read: it must be JSON of at most 1 MB.",
    ),
    (
        "script.stopped",
        "This element stopped; the last picture is shown. Reload the page to start it again.",
    ),
    (
        "script.unavailable",
        "The live element could not start here; this is its fixed picture.",
    ),
    ("site.all_pages", "Contents"),
    ("site.answer", "Answer."),
    ("site.answer_and_working", "Answer and working"),
    ("site.beside", "Previous and next page"),
    ("site.check_case", "Published case"),
    ("site.check_difference", "Difference"),
    ("site.check_here", "Here"),
    ("site.check_ids", "Check"),
    ("site.check_label", "How we know"),
    ("site.check_published", "Published"),
    ("site.check_source", "Source"),
    ("site.check_tolerance", "Tolerance"),
    ("site.course_answers", "Answers"),
    ("site.course_count", "{0} questions"),
    ("site.course_key", "Answer key"),
    ("site.course_lesson", "Lesson plan"),
    ("site.course_plan", "Plan"),
    ("site.course_questions", "Questions"),
    ("site.course_topic", "Topic"),
    (
        "site.disclaimer",
        "For teaching and early comparison. It replaces no licensed engineering practice; local law and the vehicle maker's instructions come first.",
    ),
    ("site.embed_classic", "Script, all in one file"),
    ("site.embed_copied", "Copied."),
    ("site.embed_copy", "Copy"),
    ("site.embed_frame", "Frame"),
    ("site.embed_image", "Still image"),
    ("site.embed_module", "Script, as a module"),
    (
        "site.embed_no_script",
        "The builder needs script. Without it, take the frame of a topic and put the address of this site in the place of example.org/axlewright.",
    ),
    ("site.embed_save", "Save the figure"),
    ("site.embed_topic", "Topic"),
    ("site.group_reference", "Reference"),
    ("site.group_start", "Begin here"),
    ("site.group_teach", "Teach"),
    ("site.group_topics", "Topics"),
    ("site.group_use", "Use"),
    ("site.interface_default", "Default"),
    ("site.interface_help", "What it does"),
    ("site.interface_kind", "Type"),
    ("site.interface_name", "Name"),
    ("site.interface_schema", "JSON Schema"),
    ("site.interface_takes", "Takes"),
    ("site.interface_topic", "Topic"),
    ("site.interface_topics", "Topics"),
    (
        "site.invented",
        "All vehicles shown here are invented; none stands for a real car.",
    ),
    ("site.lesson_discuss", "Discuss."),
    (
        "site.lesson_example",
        "Go through the worked example on the page, step by step; open one number in the element and find the same step there.",
    ),
    ("site.lesson_explore", "Explore with the element."),
    ("site.lesson_minutes", "Minutes"),
    (
        "site.lesson_open",
        "Ask the opening question. Collect answers on the board; judge none yet.",
    ),
    (
        "site.lesson_practice",
        "Each student answers the practice questions of the page, alone, with a prediction first.",
    ),
    ("site.lesson_predict", "Predict."),
    ("site.lesson_total", "in all"),
    ("site.lesson_what", "What happens"),
    (
        "site.licence",
        "Free to use under the MIT or the Apache 2.0 licence.",
    ),
    ("site.new_version", "A new version of these pages is here."),
    ("site.new_version_take", "Take it"),
    ("site.new_window", "Opens in a new window"),
    ("site.no_questions", "This topic has no questions yet."),
    (
        "site.no_script",
        "This element needs script, which is switched off here.",
    ),
    ("site.pages", "Pages"),
    (
        "site.practice_how",
        "Answer before you look: first a guess, then a sum. The numbers are drawn from a seed, so everybody has the same.",
    ),
    ("site.question_number", "Question {0}"),
    ("site.search", "Search"),
    (
        "site.search_none",
        "Nothing was found. Try another word, or a part of one.",
    ),
    ("site.skip", "To the content"),
    ("site.source_equations", "Equations"),
    ("site.source_used", "Used by"),
    ("site.source_values", "Published values"),
    ("site.surface", "Surface"),
    ("site.surface_known", "How we know"),
    ("site.surface_memory", "from memory"),
    ("site.surface_peak", "Peak friction"),
    ("site.surface_quoted", "quoted in another text"),
    ("site.surface_sliding", "Sliding friction"),
    ("site.symbol", "Symbol"),
    ("site.symbol_inputs", "Inputs"),
    ("site.symbol_name", "What it stands for"),
    ("site.symbol_unit", "Unit"),
    (
        "source.adhesion",
        "J. Y. Wong, Theory of Ground Vehicles, Table 1.3 (quoted): sliding friction",
    ),
    (
        "source.choice",
        "Weighted mean of shares, best over own; weights and unit costs are invented defaults. What each layout does comes from the topics.",
    ),
    (
        "source.drilling",
        "Bound: formula after Gough (from memory). Sliding patch: derived, uniform pressure",
    ),
    (
        "source.idle_drag",
        "Derived: losses quadratic in the torque; flux in inverse proportion to speed above the base speed",
    ),
    (
        "source.launch",
        "Equation of motion, integrated from rest (Dormand and Prince, order 5)",
    ),
    (
        "source.load_transfer",
        "Jazar, Vehicle Dynamics: Theory and Application, ch. 2, eq. 2.121–2.122",
    ),
    (
        "source.motor_split",
        "Balance of forces and moments; like motors share torque as their number",
    ),
    (
        "source.packaging",
        "Volumes of parts that carry the same power add; geometry of a wheel that turns about its own middle.",
    ),
    (
        "source.planar",
        "Two-track planar model: balance of forces and of the yaw moment in steady state",
    ),
    (
        "source.single_track",
        "T. D. Gillespie, Fundamentals of Vehicle Dynamics, ch. 6: single track (from memory)",
    ),
    ("source.spin", "Read off the run of the planar model"),
    (
        "source.squat",
        "Body on two independent springs, pitch inertia m·a·b; common practice, no source",
    ),
    ("source.statics", "Balance of forces and moments"),
    (
        "source.traction",
        "Wong, Theory of Ground Vehicles, ch. 3; Gillespie, Fundamentals of Vehicle Dynamics, ch. 2",
    ),
    (
        "source.turn_in_place",
        "Derived: Coulomb friction opposes the sliding velocity of every patch",
    ),
    (
        "source.vectoring",
        "Derived: a force difference times half the track is a moment",
    ),
    (
        "source.wear",
        "Set by Giechaskiel et al., Sustainability 16(2) 522, 2024 (read); range after Grosch 2008 (from memory); the use of friction in ordinary driving is an assumption",
    ),
    (
        "starter.intro",
        "A line that begins with # is a comment; remove the # to set that field.",
    ),
    (
        "step.acceleration_gain",
        "lateral acceleration for each steer angle",
    ),
    (
        "step.ackermann_angle",
        "Ackermann angle, the steer angle at walking pace",
    ),
    (
        "step.after_rollout",
        "the clock starts after the first foot",
    ),
    (
        "step.against_found",
        "turn against the bound, from the balance of forces and moments",
    ),
    ("step.apparent_mass", "apparent mass with wheels and rotors"),
    ("step.available", "torque that one motor gives its wheel"),
    (
        "step.axle_copper",
        "copper of an axle, for its torque squared",
    ),
    (
        "step.axle_fixed",
        "loss of an axle that does not depend on its torque",
    ),
    (
        "step.base_speed",
        "base speed, above which the field is weakened",
    ),
    (
        "step.battery_energy",
        "energy from the battery: road, change of kinetic energy, motors, gears, brakes, other power",
    ),
    ("step.bearing_loss", "bearings and windage"),
    ("step.best_share", "least loss: c_f·T_f = c_r·T_r"),
    (
        "step.booster_share",
        "share of the driving time in which both axles drive",
    ),
    (
        "step.both_above",
        "force from which both axles together lose less than one: there the motors give T_2",
    ),
    (
        "step.brake_deceleration",
        "deceleration if nothing makes up for the brake",
    ),
    ("step.brake_force", "force of the one braked wheel"),
    ("step.brake_heat", "heat in the brake"),
    (
        "step.brake_power",
        "power from the battery that makes up for the brake",
    ),
    (
        "step.braking_torque",
        "torque with which the motors may brake",
    ),
    ("step.centre", "turning centre: the lateral forces balance"),
    (
        "step.centre_even",
        "turning centre: midway, because both axles carry the same",
    ),
    (
        "step.centre_rolls",
        "turning centre: on the axle whose wheels only roll",
    ),
    (
        "step.cg_to_rear",
        "distance of the CG ahead of the rear axle",
    ),
    (
        "step.changes_at",
        "change at which another layout is recommended, as a share (values in SI)",
    ),
    (
        "step.characteristic_speed",
        "speed at which the steer angle is twice the Ackermann angle",
    ),
    ("step.cost", "cost of the layout"),
    (
        "step.critical_speed",
        "speed above which the car does not hold its course",
    ),
    ("step.cycle_distance", "distance of the cycle"),
    ("step.drag", "aerodynamic drag"),
    (
        "step.drift",
        "drift downhill in one slow turn, to the first order in the slope",
    ),
    (
        "step.drift_across",
        "force that answers a drift of 1 m per radian across the car",
    ),
    (
        "step.drift_along",
        "force that answers a drift of 1 m per radian along the car",
    ),
    (
        "step.drilling",
        "drilling moment of both patches of the axle while they slide",
    ),
    (
        "step.drilling_as_bound",
        "the patch hardly slides, so only the bound is known",
    ),
    (
        "step.drilling_bound",
        "upper bound of the drilling moment of the axle: patches that are only twisted",
    ),
    (
        "step.drilling_bound_sum",
        "upper bound of the drilling moment of all patches",
    ),
    ("step.drilling_sum", "drilling moment of all patches"),
    ("step.drive_cost", "cost of all drive units"),
    (
        "step.drive_force",
        "tractive force from the torque of all motors at the wheels",
    ),
    ("step.drive_mass", "mass of all drive units"),
    (
        "step.drive_power",
        "power from the battery, with the mean speed of the driven wheels",
    ),
    ("step.drive_volume", "volume of all drive units"),
    ("step.drop_rear", "drop over the rear axle"),
    ("step.end_speed", "speed at the end: read off the run"),
    ("step.energy", "energy lost to sliding in one full turn"),
    (
        "step.energy_bound",
        "energy of a turn if the bound resisted all the while",
    ),
    (
        "step.energy_per_distance",
        "energy of the cycle for its distance",
    ),
    ("step.energy_per_km", "energy for the distance"),
    ("step.flux", "flux as a share of the full one"),
    ("step.force", "tractive force that this acceleration needs"),
    ("step.force_against", "force of one wheel against the bound"),
    ("step.force_at_wheels", "force at the wheels"),
    ("step.force_front", "tractive force of one front wheel"),
    ("step.force_mean", "mean tractive force per wheel"),
    (
        "step.force_per_wheel",
        "tractive force per wheel: the part of its friction that points along the wheel",
    ),
    ("step.force_rear", "tractive force of one rear wheel"),
    (
        "step.force_rest",
        "tractive force of a rolling wheel: what the other axle leaves over",
    ),
    ("step.front_force", "tractive force of the front axle"),
    (
        "step.front_lift",
        "acceleration at which the front axle carries nothing",
    ),
    ("step.front_load", "front axle load"),
    (
        "step.front_reach",
        "reach of a front wheel inward of its middle, at full lock",
    ),
    ("step.front_share", "front share of the load"),
    ("step.front_torque_share", "front share of the torque"),
    (
        "step.front_unaccelerated",
        "front axle load at a steady speed",
    ),
    ("step.front_use", "friction that the front axle uses"),
    (
        "step.grip",
        "tractive force of an axle that slips: all the friction it has",
    ),
    (
        "step.grip_until",
        "last moment at which grip, not the motor, limits this axle: read off the run",
    ),
    ("step.heat", "energy of sliding at one tyre in a turn"),
    ("step.heave", "heave of the CG"),
    (
        "step.ideal_share",
        "ideal front share of the force at rest: the front share of the load",
    ),
    (
        "step.idle_induction",
        "an induction motor without current: bearings alone",
    ),
    (
        "step.idle_loss_per_km",
        "loss in motors that make no torque",
    ),
    (
        "step.idle_magnet",
        "a motor with magnets and no torque: iron, field weakening, bearings",
    ),
    ("step.iron_loss", "iron loss at full flux"),
    (
        "step.lateral_acceleration",
        "lateral acceleration of the turn",
    ),
    (
        "step.lateral_limit",
        "lateral acceleration of the fastest turn that is held",
    ),
    (
        "step.lateral_scrub",
        "moment if every patch scrubbed straight sideways",
    ),
    ("step.left_with_one", "what is left with one unit"),
    ("step.left_with_two", "what is left with two units"),
    (
        "step.lengthwise",
        "share of the friction that points along the wheels",
    ),
    ("step.lift_front", "lift on the front axle"),
    ("step.lift_rear", "lift on the rear axle"),
    (
        "step.like_motors",
        "limit when every motor gives the same torque: equation of motion, solved with friction and axle loads",
    ),
    (
        "step.limit_all",
        "limit of all-wheel drive: each axle gives all it has, so load transfer cancels out",
    ),
    (
        "step.limit_fixed_front",
        "limit with a fixed split: the front tyres slip first",
    ),
    (
        "step.limit_fixed_rear",
        "limit with a fixed split: the rear tyres slip first",
    ),
    (
        "step.limit_front",
        "limit of front drive: load leaves the axle that drives",
    ),
    (
        "step.limit_gained",
        "traction limit gained over the best layout compared that has fewer motors",
    ),
    ("step.limit_lift", "limit: the front axle leaves the ground"),
    (
        "step.limit_rear",
        "limit of rear drive: load comes to the axle that drives",
    ),
    ("step.limit_speed", "speed of that turn"),
    (
        "step.lock_found",
        "full lock: the motion that loses least power to sliding",
    ),
    (
        "step.lock_sweep",
        "full lock: distance of the front axle from the turning centre",
    ),
    (
        "step.matching",
        "acceleration at which the front share of the load is that of the torque",
    ),
    ("step.mixed_brake", "force of the braked front wheel"),
    ("step.mixed_heat", "heat in the front brake"),
    ("step.mixed_motor", "force at each rear wheel"),
    ("step.mixed_power", "power from the battery for both"),
    (
        "step.motion_all",
        "limit when each axle gives all it has: equation of motion, solved with friction and axle loads",
    ),
    (
        "step.motion_motor",
        "equation of motion, solved with the motors at their torque",
    ),
    (
        "step.motion_slip",
        "equation of motion, solved together with friction and the axle loads below",
    ),
    (
        "step.motor_energy",
        "energy from the motors: motion of the car and of its spinning parts, work against drag, rolling resistance and grade, heat from slip",
    ),
    ("step.motor_loss", "loss of all motors"),
    (
        "step.motor_loss_per_km",
        "loss in the motors for the distance",
    ),
    (
        "step.motor_pair_force",
        "force at each wheel, forward outside and rearward inside",
    ),
    (
        "step.motor_pair_power",
        "one motor drives, the other gives back; the drive loses a part both ways",
    ),
    ("step.motor_speed", "speed of the motors"),
    ("step.motors", "motors: front and rear"),
    (
        "step.other_holds",
        "moment with which the other axle resists being dragged sideways",
    ),
    ("step.overshoot", "largest yaw rate over the steady one"),
    (
        "step.pair_drives",
        "most that the driven pair can make about its own axle",
    ),
    (
        "step.parts",
        "parts: motor, inverter and gears for each motor, two half shafts for each driven axle, a differential where one motor drives two wheels",
    ),
    ("step.parts_total", "parts of the layout"),
    (
        "step.patch_length",
        "length of a contact patch as wide as the tyre",
    ),
    (
        "step.path_radius",
        "distance of the CG from the turning centre",
    ),
    (
        "step.peak_slip",
        "largest slip of this axle: read off the run",
    ),
    ("step.pitch", "pitch angle, nose down positive"),
    ("step.power_density", "power density of the whole set"),
    (
        "step.power_needed",
        "most power of the motor that pushes hardest, on the way to the speed asked for: from its force and the speed there",
    ),
    ("step.range", "range"),
    (
        "step.range_lost",
        "further range if motors without torque lost nothing, which takes E_0",
    ),
    ("step.range_of_layout", "range with the battery"),
    ("step.ratio", "rear load over front load"),
    (
        "step.reach",
        "yaw moment of the forces along the car, apart from left to right, and of what the forces across it gain or lose",
    ),
    ("step.rear_force", "tractive force of the rear axle"),
    ("step.rear_load", "rear axle load"),
    (
        "step.rear_reach",
        "reach of a rear wheel inward of its middle",
    ),
    (
        "step.rear_unaccelerated",
        "rear axle load at a steady speed",
    ),
    ("step.rear_use", "friction that the rear axle uses"),
    (
        "step.resisting",
        "moment of the lateral forces about the turning centre",
    ),
    ("step.rise_front", "rise over the front axle"),
    (
        "step.rise_time",
        "from half of the steering to nine tenths of the steady yaw rate",
    ),
    ("step.road_load", "air drag, rolling resistance and grade"),
    ("step.room", "room between the wheels"),
    ("step.room_left", "what is left at the tighter driven axle"),
    (
        "step.room_share",
        "share of the room at the rear axle that no drive unit takes",
    ),
    ("step.same_force", "the same at each wheel"),
    (
        "step.saved_by_split",
        "saved against the same torque from every motor, which takes E_v",
    ),
    ("step.score", "score: weighted mean of the shares"),
    ("step.shaft_torque", "torque at the shafts of the motors"),
    (
        "step.share",
        "share: the best that meets the brief over its own, or the other way round where more is better",
    ),
    (
        "step.shift",
        "load that the drive torque of a solid axle moves from one wheel to the other, in proportion to the force",
    ),
    (
        "step.sideslip",
        "sideslip angle with the slip angle at which the rear tyres hold the turn",
    ),
    ("step.single_sideslip", "sideslip angle of the single track"),
    ("step.single_steer", "steer angle of the single track"),
    ("step.slide_along", "sliding along the car per radian"),
    (
        "step.slide_front",
        "sliding speed of a front patch over yaw rate",
    ),
    ("step.slide_in_all", "sliding in all per radian"),
    (
        "step.slide_rear",
        "sliding speed of a rear patch over yaw rate",
    ),
    ("step.slope_angle", "slope angle from the grade"),
    (
        "step.speed_at_time",
        "speed at the time shown: read off the run",
    ),
    (
        "step.speed_ratio",
        "wheel speed over yaw rate: what the wheels put in is what sliding takes out",
    ),
    (
        "step.speed_ratio_even",
        "wheel speed over yaw rate: the moments balance",
    ),
    (
        "step.speed_ratio_rolls",
        "wheel speed over yaw rate: the rolling wheels set it",
    ),
    (
        "step.spin_energy",
        "motor energy: motion, sliding heat and climb",
    ),
    ("step.spin_settles", "time read off the run"),
    ("step.spin_steady", "yaw rate at the end of the run"),
    ("step.spin_time", "angle over the mean yaw rate of the run"),
    ("step.spin_way_off", "way of the CG in a straight line"),
    ("step.split_force", "force of one wheel along the car"),
    (
        "step.split_force_front",
        "mean size of the front wheels' force",
    ),
    (
        "step.split_force_rear",
        "mean size of the rear wheels' force",
    ),
    (
        "step.split_found",
        "the motion that loses least power to sliding",
    ),
    ("step.split_grip", "friction of one patch"),
    ("step.split_slide", "sliding of one patch per radian"),
    ("step.static_front", "front axle load at rest on the level"),
    ("step.static_rear", "rear axle load at rest on the level"),
    (
        "step.steer",
        "steer angle with the slip angle at which the front tyres hold the turn",
    ),
    ("step.surface_energy", "energy in proportion to friction"),
    ("step.surface_torque", "torque in proportion to friction"),
    (
        "step.swept_area",
        "area that a front wheel sweeps from lock to lock",
    ),
    (
        "step.test_gradient",
        "understeer gradient of the constant-radius test: change of steer angle over change of lateral acceleration",
    ),
    (
        "step.time_saved",
        "time saved against the quickest layout compared that has fewer motors",
    ),
    (
        "step.time_to_distance",
        "time: distance over the mean speed of the run",
    ),
    (
        "step.time_to_speed",
        "time: momentum over mean tractive force less mean resistance, both added up over the run",
    ),
    ("step.torque", "mean torque per wheel"),
    ("step.torque_bound", "mean wheel torque against the bound"),
    ("step.torque_front", "torque of one front wheel"),
    (
        "step.torque_needed",
        "torque of the motor that pushes hardest at the limit, from the force that it must give",
    ),
    ("step.torque_rear", "torque of one rear wheel"),
    (
        "step.torque_share",
        "front share of the torque of like motors",
    ),
    (
        "step.transfer",
        "rear axle load gained against rest on the level",
    ),
    (
        "step.trap_speed",
        "speed there: what the mean of all forces gives in that time",
    ),
    (
        "step.tread_least",
        "tread lost with the least coefficient of the range",
    ),
    ("step.tread_lost", "tread lost in one turn, all four tyres"),
    (
        "step.tread_most",
        "tread lost with the largest coefficient of the range",
    ),
    (
        "step.two_to_one",
        "acceleration at which the rear carries twice the front",
    ),
    (
        "step.tyre_heat",
        "heat from slip, front and rear: force times sliding speed, added up",
    ),
    (
        "step.understeer_gradient",
        "understeer gradient: load over cornering stiffness of two tyres, front less rear",
    ),
    (
        "step.unit_volume",
        "volume of one drive unit: motor, inverter, gears with differential",
    ),
    ("step.unit_width", "width of the unit's outer box"),
    (
        "step.wear_calibrated",
        "coefficient that wears off the measured mass in one kilometre",
    ),
    ("step.wear_car", "mass of the mean car of the measurements"),
    (
        "step.wear_drag",
        "force that slip loses in ordinary driving",
    ),
    ("step.wear_given", "wear coefficient as given"),
    ("step.weight", "weight"),
    (
        "step.wheel_half_diagonal",
        "half the diagonal of the wheel, seen from above",
    ),
    ("step.yaw_gain", "yaw rate for each steer angle"),
    (
        "step.yaw_gained",
        "yaw moment gained over the best layout compared that has fewer motors",
    ),
    (
        "step.yaw_of_layout",
        "largest yaw moment that the motors add in the turn of cornering",
    ),
    (
        "step.yaw_pair",
        "yaw moment: one wheel of a pair pushes, the other pulls, each with its motor or its grip, whichever is less",
    ),
    ("surface.asphalt_dry", "dry asphalt or concrete"),
    ("surface.asphalt_wet", "wet asphalt"),
    ("surface.concrete_wet", "wet concrete"),
    ("surface.earth_dry", "dry earth road"),
    ("surface.earth_wet", "wet earth road"),
    ("surface.gravel", "gravel"),
    ("surface.ice", "ice"),
    ("surface.short.asphalt_dry", "dry asphalt"),
    ("surface.short.asphalt_wet", "wet asphalt"),
    ("surface.short.concrete_wet", "wet concrete"),
    ("surface.short.earth_dry", "dry earth"),
    ("surface.short.earth_wet", "wet earth"),
    ("surface.short.gravel", "gravel"),
    ("surface.short.ice", "ice"),
    ("surface.short.snow", "snow"),
    ("surface.snow", "hard-packed snow"),
    (
        "talk.allowed.choices",
        "two values or more, and as many words",
    ),
    ("talk.allowed.list", "a list of texts"),
    (
        "talk.allowed.question",
        "one of value, largest and smallest",
    ),
    (
        "talk.allowed.steps",
        "1 to 500 steps, each a [[steps]] table",
    ),
    ("talk.allowed.table", "a table"),
    ("talk.allowed.text", "a text"),
    ("talk.form", "{0}: \"{1}\" cannot be said: {2}."),
    (
        "talk.gone",
        "With these inputs there is no value for this sentence.",
    ),
    ("talk.in_head", "Head of the talk: {0}"),
    ("talk.in_step", "Step {0}: {1}"),
    ("talk.ui.add", "Add"),
    ("talk.ui.answer", "Answer: {0}."),
    ("talk.ui.back", "Back"),
    ("talk.ui.camera", "On camera"),
    ("talk.ui.clean", "Clean view"),
    ("talk.ui.clear", "Clear"),
    ("talk.ui.clear_paper", "Transparent"),
    ("talk.ui.colour", "Colour of the pen"),
    ("talk.ui.dark", "Dark"),
    ("talk.ui.forward", "Forward"),
    ("talk.ui.ink", "Ink"),
    ("talk.ui.ink_front", "blue"),
    ("talk.ui.ink_inertia", "purple"),
    ("talk.ui.ink_ink", "ink"),
    ("talk.ui.ink_rear", "red"),
    ("talk.ui.ink_tractive", "green"),
    ("talk.ui.keys", "Keys"),
    (
        "talk.ui.keys_list",
        "→, Page Down, Space: forward; ←, Page Up: back; Home, End: first and last step; W: what if; R: back to the talk; P: pen; E: rubber; U: undo; N: note; C: clean view; F: full screen",
    ),
    ("talk.ui.large", "Large type"),
    ("talk.ui.last", "This is the last step."),
    ("talk.ui.next", "Next"),
    ("talk.ui.no_note", "No note."),
    ("talk.ui.note", "Note"),
    ("talk.ui.notes_open", "Note"),
    ("talk.ui.one_more", "One more for {0}"),
    ("talk.ui.pen", "Pen"),
    ("talk.ui.predicted", "Predicted: {0}."),
    ("talk.ui.prediction", "Your prediction"),
    ("talk.ui.presenter", "Presenter window"),
    ("talk.ui.print", "Print handout"),
    ("talk.ui.refused", "This talk cannot be shown. {0}"),
    ("talk.ui.restore", "Back to the talk"),
    ("talk.ui.rubber", "Rubber"),
    ("talk.ui.save", "Save figure"),
    ("talk.ui.screen", "Full screen"),
    ("talk.ui.show_answer", "Show the answer"),
    (
        "talk.ui.source",
        "A talk is a TOML or JSON file of 1 MB at most. {0}",
    ),
    ("talk.ui.speaker", "Speaker"),
    ("talk.ui.step", "Step {0} of {1}"),
    ("talk.ui.steps", "Steps"),
    (
        "talk.ui.stopped",
        "This step cannot be shown; the last picture stays.",
    ),
    ("talk.ui.take", "Take along"),
    ("talk.ui.tall", "9 : 16"),
    ("talk.ui.time", "Time since the start"),
    ("talk.ui.tools", "Tools"),
    ("talk.ui.transcript", "The talk as text"),
    ("talk.ui.undo", "Undo"),
    ("talk.ui.what", "What if?"),
    ("talk.ui.wide", "16 : 9"),
    ("talk.value", "{0}: \"{1}\" is not a value of this step."),
    (
        "talk.value_near",
        "{0}: \"{1}\" is not a value of this step; the nearest is \"{2}\".",
    ),
    (
        "talk.whose",
        "All vehicles with a name are invented. The figures are computed as the talk runs.",
    ),
    (
        "talk.why.brace",
        "a brace is open or closed on its own; one that is meant is written twice",
    ),
    ("talk.why.digits", "digits are 1 to 9"),
    ("talk.why.name", "the name is missing"),
    ("talk.why.unit", "the value has no such unit"),
    ("topic.choice", "Which layout for this brief"),
    ("topic.cornering", "Cornering"),
    ("topic.idle_drag", "What an idle motor costs"),
    ("topic.launch", "The launch"),
    ("topic.load_transfer", "Weight transfer"),
    ("topic.motor_split", "How many motors"),
    ("topic.packaging", "Fitting the motors in"),
    ("topic.traction", "Traction limits"),
    ("topic.turn_in_place", "Turning in place"),
    ("ui.as_csv", "CSV"),
    ("ui.as_json", "JSON"),
    ("ui.as_png_1", "PNG 1×"),
    ("ui.as_png_2", "PNG 2×"),
    ("ui.as_png_3", "PNG 3×"),
    ("ui.as_png_4", "PNG 4×"),
    ("ui.as_svg", "SVG"),
    ("ui.as_toml", "scenario file"),
    ("ui.chart_read", "Read the chart along {0}"),
    ("ui.chart_set", "A click or the Enter key sets {0} there."),
    ("ui.copy", "Copy"),
    ("ui.copy_element", "line to embed"),
    ("ui.copy_frame", "frame to embed"),
    ("ui.copy_latex", "Copy as LaTeX"),
    ("ui.copy_link", "link to this state"),
    ("ui.copy_module", "module to embed"),
    ("ui.copy_text", "Copy as text"),
    ("ui.data", "Data of this chart"),
    ("ui.grips", "Handles in the figure"),
    ("ui.motors.front", "motors on the front axle"),
    ("ui.motors.none", "no motor"),
    ("ui.motors.one", "1 motor"),
    ("ui.motors.rear", "motors on the rear axle"),
    ("ui.motors.two", "2 motors"),
    ("ui.no", "no"),
    ("ui.own_tyres", "dry asphalt, this vehicle's tyres"),
    ("ui.own_vehicle", "your vehicle"),
    ("ui.pause", "Pause"),
    ("ui.pin", "Pin this state"),
    ("ui.pinned", "Pinned: {0}."),
    ("ui.pinned_part", "{0} {1}, now {2}"),
    ("ui.pinned_same", "Pinned: the state that is shown."),
    ("ui.pinned_value", "(pinned {0})"),
    ("ui.play", "Play"),
    ("ui.print", "Print"),
    ("ui.quantity", "quantity"),
    ("ui.redo", "Redo"),
    ("ui.reset", "Reset {0}"),
    ("ui.reset_all", "Reset all"),
    ("ui.save_chart", "Save the chart"),
    ("ui.save_figure", "Save the figure"),
    ("ui.save_numbers", "Save the numbers"),
    ("ui.screen", "Full screen"),
    ("ui.share", "Save and share"),
    ("ui.stale", "The last good result is shown."),
    ("ui.step_back", "A step back, 0.05 s"),
    ("ui.step_forward", "A step forward, 0.05 s"),
    ("ui.undo", "Undo"),
    ("ui.unpin", "Remove the pin"),
    ("ui.value", "value"),
    ("ui.view", "View"),
    ("ui.view.bars", "comparison"),
    ("ui.view.chart", "chart"),
    ("ui.view.choice.bars", "sensitivity"),
    ("ui.view.choice.plan", "layout"),
    ("ui.view.plan", "plan view"),
    ("ui.view.side", "side view"),
    ("ui.view.traction.plan", "comparison"),
    ("ui.view.turn_in_place.bars", "surfaces"),
    ("ui.view.turn_in_place.plan", "from above"),
    ("ui.working", "Working"),
    ("ui.yes", "yes"),
    ("vehicle.corrie", "Corrie, a low sports car"),
    ("vehicle.esker", "Esker, a family saloon"),
    ("vehicle.kame", "Kame, a small city car"),
    ("vehicle.moraine", "Moraine, a heavy utility"),
    ("vehicle.name.corrie", "Corrie"),
    ("vehicle.name.esker", "Esker"),
    ("vehicle.name.kame", "Kame"),
    ("vehicle.name.moraine", "Moraine"),
    ("vehicle.own", "your vehicle"),
    (
        "why.air_lifts",
        "the air carries an axle before the tyres can push",
    ),
    ("why.axle_lifts", "an axle would leave the ground"),
    ("why.no_distance", "at rest no distance is covered"),
    ("why.no_questions", "this topic has no questions yet"),
    ("why.no_trace", "no file of a cycle has been given yet"),
    (
        "why.no_turn",
        "with these wheel speeds the wheels hold each other and the car does not turn",
    ),
    (
        "why.question_unclear",
        "with this scenario the question has no clear answer",
    ),
    (
        "why.sides_too_different",
        "the sides grip so differently that the car drives off instead of turning",
    ),
    (
        "why.slope_slides",
        "on a slope as steep as the friction the car slides away whatever its wheels do",
    ),
    (
        "why.slope_turns",
        "on a slope a turn is not steady: the hill pulls from another side all the time",
    ),
    ("why.trace_cells", "a line holds two cells"),
    ("why.trace_fast", "the speed is above 540 km/h"),
    (
        "why.trace_gap",
        "rows are missing, here or before: the steps up to this one differ by more than 1.5 times",
    ),
    (
        "why.trace_jump",
        "the speed changes by more than 30 m/s in a second",
    ),
    (
        "why.trace_long",
        "the cycle is too long: at most 43 200 rows and 600 kB",
    ),
    ("why.trace_negative", "the speed is below 0"),
    ("why.trace_number", "this is not two numbers"),
    (
        "why.trace_short",
        "there are fewer than two rows, or nothing moves",
    ),
    ("why.trace_time", "the time does not rise"),
];
