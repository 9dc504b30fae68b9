//! German. Keys, their order and the values put in are those of English.

pub(super) const WORDS: &[(&str, &str)] = &[
    ("allowed.any", "jeder Wert"),
    ("allowed.between", "{0} bis {1}"),
    ("allowed.inside", "mehr als {0} und weniger als {1}"),
    (
        "allowed.less_lift",
        "weniger Auftrieb oder weniger Steigung",
    ),
    (
        "allowed.less_speed",
        "eine kleinere Geschwindigkeit oder weniger Auftriebsfläche",
    ),
    ("allowed.level", "0 (ebene Fahrbahn)"),
    ("allowed.nearer_one", "ein Wert näher bei 1"),
    (
        "allowed.nearer_other_side",
        "ein Wert näher an dem der anderen Seite",
    ),
    ("allowed.no_question", "keine Frage"),
    (
        "allowed.other_question",
        "eine andere Frage oder andere Werte des Szenarios",
    ),
    (
        "allowed.own_cycle",
        "eine Datei des Zyklus (idle_drag.trace), deren Zeilen Zeit in s und Geschwindigkeit in km/h halten; oder ein anderer Zyklus",
    ),
    (
        "allowed.ratio",
        "eine Zahl wie 0,5 oder ein Prozentsatz wie 50 %",
    ),
    (
        "allowed.seed",
        "der Name einer Frage, dann eine ganze Zahl als Startwert",
    ),
    ("allowed.some_speed", "eine Geschwindigkeit über 0"),
    (
        "allowed.trace",
        "Zeilen mit zwei Zahlen, Zeit in s und Geschwindigkeit in km/h, etwa 0;0 und dann 1;3,5",
    ),
    (
        "caution.choice",
        "Eine Empfehlung aus wenigen Zahlen ist ein Anfang, keine Entscheidung. Was diese Motoren können, gehört auf abgesperrtes Gelände ohne Umstehende; Gesetz und Anweisungen des Fahrzeugherstellers gehen vor. Für Lehre und frühen Vergleich; es ersetzt keine Arbeit befugter Ingenieure.",
    ),
    (
        "caution.cornering",
        "Kurvenfahrten im Grenzbereich gehören auf abgesperrtes Gelände ohne Zuschauer: Ein Auto rutscht oder dreht sich ohne Vorwarnung. Örtliches Recht und die Anweisungen des Fahrzeugherstellers gehen vor. Für Unterricht und frühen Vergleich; ersetzt keine zugelassene Ingenieurleistung.",
    ),
    (
        "caution.idle_drag",
        "Verluste und Reichweiten sind aus erfundenen Beiwerten berechnet, nicht gemessen. Die Wirkungsgradklassen IE1 bis IE4 gelten für Motoren am Netz und sagen nichts über einen Fahrmotor. Für Lehre und frühen Vergleich; kein Ersatz für zugelassene Ingenieurarbeit.",
    ),
    (
        "caution.launch",
        "Scharfe Starts gehören auf abgesperrtes Gelände ohne Zuschauer: Ein Auto kann sofort seine Spur verlassen. Örtliches Recht und die Anweisungen des Fahrzeugherstellers gehen vor. Für Unterricht und frühen Vergleich; ersetzt keine zugelassene Ingenieurleistung.",
    ),
    (
        "caution.load_transfer",
        "Starkes Beschleunigen gehört auf abgesperrtes Gelände ohne Zuschauer. Örtliches Recht und die Anweisungen des Fahrzeugherstellers gehen vor. Für Unterricht und frühen Vergleich; ersetzt keine zugelassene Ingenieurleistung.",
    ),
    (
        "caution.motor_split",
        "Was diese Motoren können, gehört auf abgesperrtes Gelände ohne Zuschauer. Örtliches Recht und die Anweisungen des Fahrzeugherstellers gehen vor. Für Unterricht und frühen Vergleich; ersetzt keine zugelassene Ingenieurleistung.",
    ),
    (
        "caution.packaging",
        "Platz in der Draufsicht ist noch keine Konstruktion: Crashstruktur, Kühlung, Leitungen und Zugang zur Wartung brauchen auch Platz. Für Lehre und frühen Vergleich; es ersetzt keine Arbeit befugter Ingenieure.",
    ),
    (
        "caution.traction",
        "An der Traktionsgrenze kann ein Auto seine Spur verlassen. Nur auf abgesperrtem Gelände, ohne Zuschauer. Örtliches Recht und die Anweisungen des Fahrzeugherstellers gehen vor. Für Unterricht und frühen Vergleich; ersetzt keine zugelassene Ingenieurleistung.",
    ),
    (
        "caution.turn_in_place",
        "Nur auf abgesperrtem, ebenem Gelände, ohne Zuschauer. Es zerstört die Reifen, reißt den Boden auf, und am Hang rutscht das Fahrzeug ab. Örtliches Recht und die Anweisungen des Fahrzeugherstellers gehen vor. Für Unterricht und frühen Vergleich; ersetzt keine zugelassene Ingenieurleistung.",
    ),
    ("check.derived", "hergeleitet"),
    ("check.memory", "aus dem Gedächtnis"),
    ("check.practice", "übliche Praxis, ohne Quelle"),
    ("check.quoted", "zitiert"),
    ("check.read", "gelesen"),
    (
        "choice.because_best",
        "{0} erfüllt die Vorgabe mit der höchsten Wertung, {1}, für Kosten von {2} und mit {3} auf 60 mph. Danach kommt {4} mit {5}; am meisten macht aus: {6}.",
    ),
    (
        "choice.because_cannot_start",
        "{0}: {1} hätte die höhere Wertung, aber auf der Steigung von {2} fehlen ihren Reifen und Motoren {3}. {0} hat {4} übrig.",
    ),
    (
        "choice.because_fit",
        "{0}: {1} hätte die höhere Wertung, aber ihren Antriebseinheiten fehlen {2} Platz. Die von {0} haben {3} übrig.",
    ),
    (
        "choice.because_none",
        "Keine Anordnung erfüllt die Vorgabe. {0} wäre ohne ihre Forderungen die beste: {1}.",
    ),
    (
        "choice.because_only",
        "{0} erfüllt als einzige Anordnung die Vorgabe, für Kosten von {2} und mit {3} auf 60 mph.",
    ),
    (
        "choice.because_other",
        "{0}: {1} hätte die höhere Wertung, aber: {2}.",
    ),
    (
        "choice.because_range",
        "{0}: {1} hätte die höhere Wertung, kommt aber {2} weit, und die Vorgabe verlangt {3}. {0} kommt {4} weit.",
    ),
    (
        "choice.because_too_slow",
        "{0}: {1} hätte die höhere Wertung, braucht aber {2} auf 60 mph, und die Vorgabe erlaubt {3}. {0} braucht {4}.",
    ),
    (
        "choice.because_turn",
        "{0}: {1} hätte die höhere Wertung, kann aber nicht auf der Stelle wenden, was die Vorgabe verlangt. {0} kann es und kostet {2} statt {3}.",
    ),
    (
        "choice.because_vector",
        "{0}: {1} hätte die höhere Wertung, aber keine ihrer Achsen hat einen Motor je Rad, sie kann also kein Drehmoment verteilen. Die Motoren von {0} machen ein Giermoment von {2}.",
    ),
    ("choice.name_cost", "die Kosten"),
    ("choice.name_energy", "die Energie für die Strecke"),
    ("choice.name_room", "der Platz, der hinten bleibt"),
    ("choice.name_time", "die Zeit bis 60 mph"),
    ("dimension.acceleration", "Beschleunigung"),
    (
        "dimension.acceleration_gain",
        "Querbeschleunigung je Lenkwinkel",
    ),
    ("dimension.angle", "Winkel"),
    ("dimension.area", "Fläche"),
    ("dimension.cornering_stiffness", "Schräglaufsteifigkeit"),
    ("dimension.density", "Dichte"),
    ("dimension.distance", "Strecke"),
    ("dimension.energy", "Energie"),
    ("dimension.energy_per_distance", "Energie je Strecke"),
    ("dimension.force", "Kraft"),
    ("dimension.frequency", "Frequenz"),
    ("dimension.inertia", "Trägheitsmoment"),
    ("dimension.length", "Länge"),
    ("dimension.mass", "Masse"),
    ("dimension.power", "Leistung"),
    ("dimension.power_density", "Leistungsdichte"),
    ("dimension.pressure", "Druck"),
    ("dimension.ratio", "reine Zahlen"),
    ("dimension.rotation", "Drehzahl"),
    ("dimension.slope", "Steigung"),
    ("dimension.speed", "Geschwindigkeit"),
    (
        "dimension.steer_gradient",
        "Lenkwinkel je Querbeschleunigung",
    ),
    ("dimension.stored_energy", "Energie einer Batterie"),
    ("dimension.time", "Zeit"),
    ("dimension.torque", "Drehmoment"),
    ("dimension.volume", "Volumen"),
    ("dimension.wear_per_energy", "Abrieb je Energie"),
    ("dimension.worn_mass", "abgeriebene Masse"),
    ("dimension.yaw_gain", "Gierrate je Lenkwinkel"),
    ("dimension.yaw_rate", "Gierrate"),
    ("figure.axis.acceleration", "Beschleunigung"),
    ("figure.axis.axle_load", "Achslast"),
    ("figure.axis.friction", "Haftbeiwert"),
    ("figure.axis.front_share", "Anteil vorn"),
    ("figure.axis.lateral_acceleration", "Querbeschleunigung"),
    ("figure.axis.limit", "Traktionsgrenze"),
    ("figure.axis.sliding_friction", "Gleitbeiwert"),
    ("figure.axis.speed", "Geschwindigkeit"),
    ("figure.axis.steady_share", "Anteil am stationären Wert"),
    ("figure.axis.steer_angle", "Lenkwinkel"),
    ("figure.axis.time", "Zeit"),
    ("figure.axis.torque_needed", "nötiges mittleres Radmoment"),
    ("figure.axis.wheel_torque", "größtes Radmoment"),
    ("figure.axis.width", "Breite"),
    ("figure.axis.yaw_moment", "Giermoment"),
    ("figure.axis.yaw_rate", "Gierrate"),
    ("figure.braking", "Bremskraft"),
    ("figure.caution", "Vorsicht"),
    ("figure.cg_height", "Schwerpunkthöhe {0}"),
    ("figure.choice.bar", "{0}: von {1} auf {2}"),
    ("figure.choice.bar_told", "{0} ({1}) ergibt {2}"),
    ("figure.choice.bars_axis", "kleinste Änderung, %"),
    (
        "figure.choice.bars_none",
        "Nichts ändert die Empfehlung, jedes für sich und bis {0}",
    ),
    (
        "figure.choice.bars_title",
        "Was die Empfehlung ändern würde, jedes für sich und bis {0}",
    ),
    (
        "figure.choice.chart_describe",
        "Kosten und Zeit bis 60 mph jeder Anordnung: {0}. {1}",
    ),
    (
        "figure.choice.chart_key",
        "Volle Punkte: auf der Paretofront von allem, was ein Gewicht hat. In Klammern: erfüllt die Vorgabe nicht. Kosten sind erfunden.",
    ),
    (
        "figure.choice.chart_title",
        "Was Kosten bringen: {0} wird empfohlen",
    ),
    (
        "figure.choice.describe",
        "{0} Draufsicht eines Autos, das nach rechts schaut, mit der Anordnung {1}: {2}. {3}.",
    ),
    ("figure.choice.line_front", "beste Zeit für die Kosten"),
    ("figure.choice.shown", "Gezeigt ist {0}: {1}."),
    ("figure.choice.title", "Für diese Vorgabe: {0}"),
    (
        "figure.choice.title_none",
        "Keine Anordnung erfüllt diese Vorgabe",
    ),
    ("figure.cornering.alone", "Ohne Hilfe"),
    ("figure.cornering.brakes_front", "Eine Bremse vorn"),
    ("figure.cornering.brakes_rear", "Eine Bremse hinten"),
    (
        "figure.cornering.circle",
        "Kreis: alle Reibung, die ein Reifen hat; Pfeil und Prozent: was er nutzt.",
    ),
    (
        "figure.cornering.describe",
        "Draufsicht eines Fahrzeugs, das mit {0} auf einem Radius von {1} nach links fährt, einmal für jede Art, das gleiche Giermoment zu machen.",
    ),
    (
        "figure.cornering.describe_alone",
        "Draufsicht eines Autos, das mit {0} auf einem Radius von {1} nach links fährt; Lenkwinkel {2}.",
    ),
    (
        "figure.cornering.describe_used",
        "Anteile ihrer Reibung, die die Reifen nutzen, vorn links, vorn rechts, hinten links, hinten rechts: {0}, {1}, {2}, {3}.",
    ),
    (
        "figure.cornering.describe_way",
        "{0}: {1} aus der Batterie, Lenkwinkel {2}.",
    ),
    (
        "figure.cornering.limit_shown",
        "Gezeigt ist die schnellste Kurvenfahrt auf diesem Radius.",
    ),
    ("figure.cornering.line_ackermann", "Ackermann"),
    ("figure.cornering.line_full", "Zweispur"),
    ("figure.cornering.line_lateral", "quer"),
    ("figure.cornering.line_single", "Einspur"),
    ("figure.cornering.line_yaw", "Gierrate"),
    ("figure.cornering.mixed", "Bremse vorn, Motoren hinten"),
    (
        "figure.cornering.moment_describe",
        "Giermoment über der Querbeschleunigung bei {0}, eine Linie je Lenkwinkel, auf der sich der Schwimmwinkel von 10° bis −10° ändert. Wo eine Linie die Null kreuzt, ist die Kurvenfahrt stationär.",
    ),
    (
        "figure.cornering.moment_key",
        "Jede Linie: ein Lenkwinkel, mit dem Schwimmwinkel von 10° bis −10°.",
    ),
    (
        "figure.cornering.moment_title",
        "Bei {0} und {1} Lenkwinkel sind die Momente bei {2} im Gleichgewicht",
    ),
    ("figure.cornering.motors_front", "Zwei Motoren vorn"),
    ("figure.cornering.motors_rear", "Zwei Motoren hinten"),
    (
        "figure.cornering.note_brake",
        "Bremse am inneren Rad (schwarzer Block), nach hinten",
    ),
    (
        "figure.cornering.note_force",
        "Motoren an den zwei Rädern, eines vor, eines zurück",
    ),
    ("figure.cornering.note_heat", "Wärme in der Bremse"),
    ("figure.cornering.note_power", "aus der Batterie"),
    (
        "figure.cornering.note_slow",
        "Verlust je Sekunde, wenn nichts die Geschwindigkeit hält",
    ),
    ("figure.cornering.note_steer", "Lenkwinkel; {0} ohne Hilfe"),
    ("figure.cornering.note_steer_alone", "Lenkwinkel"),
    (
        "figure.cornering.radius_describe",
        "Lenkwinkel über der Querbeschleunigung bei festem Radius von {0}. Die Linie beginnt beim Ackermannwinkel von {1} und endet bei {2} mit {3}.",
    ),
    (
        "figure.cornering.radius_title",
        "Auf einem Radius von {0} schafft das Auto {1}: {2}",
    ),
    (
        "figure.cornering.step_describe",
        "Gierrate und Querbeschleunigung nach einem Lenkwinkelsprung, als Anteile ihrer stationären Werte, über der Zeit. Die Gierrate erreicht neun Zehntel {0} nach der halben Lenkung und schwingt um {1} über.",
    ),
    (
        "figure.cornering.step_title",
        "Nach einem Lenkwinkelsprung braucht die Gierrate {0}",
    ),
    ("figure.cornering.subtitle", "{0}, Radius {1}, {2}."),
    (
        "figure.cornering.title",
        "Für {0} Giermoment brauchen die Motoren {1}, eine Bremse {2}",
    ),
    (
        "figure.cornering.title_cannot",
        "Diese Kurve ist nicht zu halten: {0}",
    ),
    (
        "figure.cornering.title_plain",
        "Stationäre Kurvenfahrt mit {0}",
    ),
    ("figure.drag", "Luftwiderstand"),
    ("figure.front_load", "Vorderachslast, {0}"),
    ("figure.grade", "Steigung {0}"),
    ("figure.idle_drag.axis_battery", "Energie aus der Batterie"),
    ("figure.idle_drag.axis_energy", "Energie aus der Batterie"),
    ("figure.idle_drag.axis_force", "Kraft an den Rädern"),
    ("figure.idle_drag.axis_loss", "Verlust eines Motors"),
    (
        "figure.idle_drag.bars_describe",
        "Balken der Energie für jede Anordnung: {0}.",
    ),
    (
        "figure.idle_drag.bars_reason",
        "{0}; mitlaufende Motoren {1}",
    ),
    ("figure.idle_drag.bars_road", "Fahrwiderstand allein {0}"),
    (
        "figure.idle_drag.bars_title",
        "{0} braucht {1}, {2} braucht {3}",
    ),
    (
        "figure.idle_drag.bars_title_plain",
        "Energie aus der Batterie",
    ),
    (
        "figure.idle_drag.bars_weak",
        "Die Motoren sind für den Zyklus zu schwach.",
    ),
    ("figure.idle_drag.cycle_own", "Eigener Zyklus."),
    ("figure.idle_drag.cycle_steady", "Gleichbleibend {0}."),
    ("figure.idle_drag.cycle_wltc", "WLTC Klasse 3b."),
    ("figure.idle_drag.describe", "Ansicht von oben. {0}."),
    (
        "figure.idle_drag.energy_describe",
        "Energie aus der Batterie im Verlauf des Zyklus; Bremsen bringt etwas zurück. Am Ende: {0}.",
    ),
    ("figure.idle_drag.energy_title", "Aus der Batterie: {0}"),
    (
        "figure.idle_drag.legend",
        "farbiger Motor: macht Drehmoment; grau: läuft mit; getrennte Welle: abgekoppelt",
    ),
    ("figure.idle_drag.line_both", "darüber beide Achsen"),
    ("figure.idle_drag.line_front", "darüber Vorderachse"),
    ("figure.idle_drag.line_hardest", "Zyklus höchstens"),
    ("figure.idle_drag.line_induction", "asynchron, läuft mit"),
    (
        "figure.idle_drag.line_induction_drives",
        "asynchron, treibt",
    ),
    ("figure.idle_drag.line_magnet", "Magnete, läuft mit"),
    ("figure.idle_drag.line_magnet_drives", "Magnete, treibt"),
    ("figure.idle_drag.line_most", "alle Motoren"),
    ("figure.idle_drag.line_parted", "abgekoppelt"),
    ("figure.idle_drag.line_rear", "darüber Hinterachse"),
    ("figure.idle_drag.line_road", "konstant"),
    ("figure.idle_drag.line_speed", "Tempo"),
    (
        "figure.idle_drag.losses_describe",
        "Verlust eines Motors über der Geschwindigkeit, für jede Bauart: mitlaufend, allein treibend bei konstanter Geschwindigkeit, abgekoppelt. Bei {0}: {1} mit Magneten, {2} asynchron, beide mitlaufend.",
    ),
    (
        "figure.idle_drag.losses_sub",
        "Verlust eines Motors, aus erfundenen Beiwerten.",
    ),
    (
        "figure.idle_drag.losses_title",
        "Bei {0} verliert ein mitlaufender Motor mit Magneten {1}, eine Asynchronmaschine {2}",
    ),
    (
        "figure.idle_drag.note_both",
        "an den Rädern: ab hier verlieren beide Achsen weniger als eine",
    ),
    ("figure.idle_drag.note_force", "Kraft an den Rädern"),
    (
        "figure.idle_drag.note_front_drives",
        "Verlust vorn, bei einem Drehmoment von {0}",
    ),
    (
        "figure.idle_drag.note_front_idles",
        "Verlust vorn, ohne Drehmoment",
    ),
    (
        "figure.idle_drag.note_front_parted",
        "Verlust vorn, abgekoppelt",
    ),
    (
        "figure.idle_drag.note_rear_drives",
        "Verlust hinten, bei einem Drehmoment von {0}",
    ),
    (
        "figure.idle_drag.note_rear_idles",
        "Verlust hinten, ohne Drehmoment",
    ),
    (
        "figure.idle_drag.note_rear_parted",
        "Verlust hinten, abgekoppelt",
    ),
    ("figure.idle_drag.phase_high", "Ende hoch"),
    ("figure.idle_drag.phase_low", "Ende niedrig"),
    ("figure.idle_drag.phase_medium", "Ende mittel"),
    (
        "figure.idle_drag.speed_describe",
        "Geschwindigkeit über der Zeit: {0} in {2} s, bis {1}.",
    ),
    (
        "figure.idle_drag.speed_title",
        "Der Zyklus: {0} in {2} s, bis {1}",
    ),
    (
        "figure.idle_drag.split_describe",
        "Kraft an den Rädern über der Geschwindigkeit. {0}. Jetzt verlangt: {1}; die Motoren haben {2}.",
    ),
    (
        "figure.idle_drag.split_sub",
        "Beste Aufteilung des Drehmoments, für den kleinsten Verlust.",
    ),
    (
        "figure.idle_drag.split_title",
        "{0} bei {1}: beide Achsen treiben ab {2}, darunter eine allein",
    ),
    (
        "figure.idle_drag.split_title_always",
        "{0} bei {1}: beide Achsen teilen immer, denn ein mitlaufender Motor verlöre ebenso viel",
    ),
    (
        "figure.idle_drag.split_title_never",
        "{0} bei {1}: eine Achse allein ist immer besser",
    ),
    (
        "figure.idle_drag.split_title_single",
        "{0} treibt eine Achse: es gibt nichts zu teilen",
    ),
    (
        "figure.idle_drag.title_both",
        "{0} bei {1}: beide Achsen arbeiten, die vordere mit {2} des Drehmoments; alle Motoren verlieren {3}",
    ),
    (
        "figure.idle_drag.title_front",
        "{0} bei {1}: die Vorderachse arbeitet allein; das Mitlaufen hinten kostet {2}",
    ),
    (
        "figure.idle_drag.title_none",
        "{0} bei {1}: kein Motor treibt, und das Mitlaufen kostet {2}",
    ),
    (
        "figure.idle_drag.title_rear",
        "{0} bei {1}: die Hinterachse arbeitet allein; das Mitlaufen vorn kostet {2}",
    ),
    (
        "figure.idle_drag.title_single",
        "{0} bei {1}: der Antrieb verliert {2}",
    ),
    (
        "figure.idle_drag.title_weak",
        "{0} bei {1}: so viel Drehmoment haben die Motoren nicht",
    ),
    ("figure.inertia", "m·a"),
    ("figure.invented", "Erfundenes Fahrzeug „{0}“."),
    (
        "figure.launch.all_grip",
        "Die Reifen aller angetriebenen Achsen begrenzen",
    ),
    (
        "figure.launch.battery",
        "Die Leistung der Batterie begrenzt",
    ),
    ("figure.launch.by_battery", "die Leistung der Batterie"),
    ("figure.launch.by_front_lift", "das Abheben der Vorderräder"),
    ("figure.launch.by_grip", "der Kraftschluss der Reifen"),
    (
        "figure.launch.by_motor_speed",
        "die Höchstdrehzahl der Motoren",
    ),
    ("figure.launch.by_nothing", "nichts"),
    ("figure.launch.by_power", "die Leistung der Motoren"),
    ("figure.launch.by_torque", "das Drehmoment der Motoren"),
    (
        "figure.launch.chart_describe",
        "Linien der Geschwindigkeit über der Zeit. Zeit bis 60 mph: {0}.",
    ),
    (
        "figure.launch.chart_title",
        "{0} erreicht 60 mph in {1}, {2} in {3}",
    ),
    (
        "figure.launch.chart_title_plain",
        "Geschwindigkeit über der Zeit",
    ),
    (
        "figure.launch.describe",
        "Seitenansicht eines Autos, das nach rechts schaut, Anordnung {0}, {1} nach dem Start, bei {2} und einer Beschleunigung von {3}. Vorderachslast {4}, Hinterachslast {5}; Schlupf vorn {6}, hinten {7}. {8}.",
    ),
    ("figure.launch.front_grip", "Die Vorderreifen begrenzen"),
    (
        "figure.launch.key",
        "Was begrenzt: Vorderreifen (blau, kurze Striche), Hinterreifen (orange, lange Striche), alle Reifen (grün, Strich und Punkt), Motormoment (Punkte), Leistung (durchgezogene Linie).",
    ),
    (
        "figure.launch.motor_speed",
        "Die Höchstdrehzahl der Motoren begrenzt",
    ),
    ("figure.launch.phases_1", "{0} durchgehend"),
    ("figure.launch.phases_2", "{0} bis {1}, dann {2}"),
    (
        "figure.launch.phases_3",
        "{0} bis {1}, {2} bis {3}, dann {4}",
    ),
    (
        "figure.launch.phases_4",
        "{0} bis {1}, {2} bis {3}, {4} bis {5}, dann {6}",
    ),
    ("figure.launch.power", "Die Leistung der Motoren begrenzt"),
    ("figure.launch.rear_grip", "Die Hinterreifen begrenzen"),
    ("figure.launch.title", "{0} nach {1}: {2}, {3} vom Start"),
    ("figure.launch.title_start", "{0} am Start: 60 mph nach {1}"),
    ("figure.launch.title_start_never", "{0} am Start: {1}"),
    ("figure.launch.torque", "Das Moment der Motoren begrenzt"),
    ("figure.line.asked", "verlangt"),
    ("figure.line.available", "ein Motor hat"),
    ("figure.line.front", "Vorderachse"),
    ("figure.line.front_room", "vorn"),
    ("figure.line.has", "ein Motor gibt {0}"),
    ("figure.line.needed", "nötig"),
    ("figure.line.one_unit", "eine Einheit"),
    ("figure.line.reached", "erreicht"),
    ("figure.line.rear", "Hinterachse"),
    ("figure.line.rear_room", "hinten"),
    ("figure.line.two_units", "zwei Einheiten"),
    (
        "figure.load_transfer.chart_describe",
        "Zwei Geraden: Mit der Beschleunigung sinkt die Vorderachslast und steigt die Hinterachslast. Bei {0} sind es {1} und {2}. Die Last steht 2 : 1 bei {3}; die Vorderachse hebt ab bei {4}.",
    ),
    (
        "figure.load_transfer.chart_title",
        "Achslasten über der Beschleunigung",
    ),
    (
        "figure.load_transfer.describe",
        "Seitenansicht eines Autos, das nach rechts schaut. Vorderachslast {0}, Hinterachslast {1}. Die Trägheitskraft von {2} greift im Schwerpunkt an, {3} über dem Boden.",
    ),
    (
        "figure.load_transfer.title",
        "Beim Beschleunigen mit {0} trägt die Hinterachse das {1}-Fache der Vorderachse",
    ),
    (
        "figure.load_transfer.title_braking",
        "Beim Bremsen mit {0} trägt die Vorderachse das {1}-Fache der Hinterachse",
    ),
    (
        "figure.load_transfer.title_steady",
        "Bei konstanter Geschwindigkeit trägt die Hinterachse das {1}-Fache der Vorderachse",
    ),
    ("figure.mark.front_lift", "vorn hebt ab"),
    ("figure.mark.two_to_one", "2 : 1"),
    (
        "figure.motor_split.arrow",
        "Pfeil: die Kraft, mit der sie schiebt",
    ),
    (
        "figure.motor_split.chart_describe",
        "Der Lastanteil vorn fällt geradlinig von {0} im Stand. Gleiche Motoren behalten ihren Anteil. Beide treffen sich bei: {1}.",
    ),
    (
        "figure.motor_split.chart_title",
        "Anteil vorn an der Last und am Moment gleicher Motoren",
    ),
    (
        "figure.motor_split.circle",
        "Kreis: die Reibung der Aufstandsfläche",
    ),
    (
        "figure.motor_split.describe",
        "Draufsicht eines Autos, das nach rechts schaut, mit der Anordnung {0}: {1} vorn, {2} hinten. An seiner Traktionsgrenze von {3} ist die Last vorn zu hinten {4} aufgeteilt; gleiche Motoren teilen ihr Moment {5} auf.",
    ),
    ("figure.motor_split.line_load", "Last"),
    ("figure.motor_split.mark_limit", "Reifengrenze"),
    (
        "figure.motor_split.note_equal",
        "mit gleichem Moment von jedem Motor (gibt jeder, was er kann: {0})",
    ),
    (
        "figure.motor_split.note_load",
        "Last, vorn zu hinten, an der Grenze von {0}",
    ),
    (
        "figure.motor_split.note_torque",
        "Moment gleicher Motoren, vorn zu hinten",
    ),
    (
        "figure.motor_split.title",
        "{0}: Moment und Last passen zusammen bei {1}",
    ),
    (
        "figure.motor_split.title_beyond",
        "{0}: Moment und Last passten bei {1} zusammen, doch die Reifen halten nur bis {2}",
    ),
    (
        "figure.motor_split.title_braking",
        "{0}: Moment und Last passten nur beim Bremsen zusammen, bei {1}",
    ),
    (
        "figure.motor_split.title_one_axle",
        "{0} treibt eine Achse an und erreicht {1}",
    ),
    ("figure.own", "Fahrzeug wie angegeben."),
    (
        "figure.packaging.chart_describe",
        "Der Platz an der Vorderachse nimmt mit dem Lenkwinkel ab; bei {0} sind es {1}. Die Hinterachse behält {2}. Eine Einheit braucht {3}, zwei brauchen {4}.",
    ),
    (
        "figure.packaging.chart_title",
        "Eingeschlagene Räder nehmen den Platz: die Vorderachse verliert {0} bei {1}",
    ),
    (
        "figure.packaging.describe",
        "Draufsicht eines Autos, das nach rechts schaut, die Vorderräder am Anschlag, {0} nach links. {1}. Eine Antriebseinheit hat {2} und ist {3} breit. Zwischen den Rädern sind vorn {4} und hinten {5} frei.",
    ),
    (
        "figure.packaging.key_room",
        "gestrichelt: Platz für Antriebseinheiten",
    ),
    (
        "figure.packaging.key_swept",
        "Strichpunkt: was ein Vorderrad von Anschlag zu Anschlag überstreicht",
    ),
    (
        "figure.packaging.key_unit",
        "voll: Antriebseinheiten, maßstäblich",
    ),
    (
        "figure.packaging.key_unit_cut",
        "voll: Antriebseinheiten, abgeschnitten, wo sie viel zu breit sind",
    ),
    (
        "figure.packaging.note_extraordinary",
        "mehr als 16 kW/L für Motor, Umrichter, Getriebe und Differenzial zusammen: außerordentlich, sagt die Branche (ohne Quelle)",
    ),
    (
        "figure.packaging.note_front",
        "Platz an der Vorderachse; ihre Einheiten brauchen {0}",
    ),
    (
        "figure.packaging.note_front_free",
        "Platz an der Vorderachse, die keine Einheit hat",
    ),
    (
        "figure.packaging.note_rear",
        "Platz an der Hinterachse; ihre Einheiten brauchen {0}",
    ),
    (
        "figure.packaging.note_rear_free",
        "Platz an der Hinterachse, die keine Einheit hat",
    ),
    (
        "figure.packaging.note_unit",
        "eine Antriebseinheit, {0} für den ganzen Satz",
    ),
    ("figure.packaging.title", "{0} passt, mit {1} Luft"),
    (
        "figure.packaging.title_cannot",
        "{0} passt nicht: es fehlen {1}",
    ),
    ("figure.rear_load", "Hinterachslast, {0}"),
    (
        "figure.squat",
        "Ein- und Ausfedern {0}-fach vergrößert gezeichnet.",
    ),
    ("figure.traction.axis", "Traktionsgrenze, g"),
    (
        "figure.traction.bars_describe",
        "Balken der Traktionsgrenze je Anordnung: {0}.",
    ),
    ("figure.traction.bars_row", "{0} {1}, {2}"),
    (
        "figure.traction.bars_sub",
        "Traktionsgrenze bei einem Haftbeiwert von {0}.",
    ),
    (
        "figure.traction.bars_title",
        "{0} erreicht {1}, {2} erreicht {3}",
    ),
    (
        "figure.traction.bars_title_one",
        "Traktionsgrenze von {0}: {1}",
    ),
    (
        "figure.traction.cannot_hold",
        "kann hier seine Geschwindigkeit nicht halten: {0}",
    ),
    (
        "figure.traction.chart_describe",
        "Linien der Traktionsgrenze über dem Haftbeiwert. Bei {0}: {1}.",
    ),
    (
        "figure.traction.chart_title",
        "Traktionsgrenze über dem Haftbeiwert",
    ),
    ("figure.traction.mu", "Haftbeiwert {0}"),
    (
        "figure.traction.side_describe",
        "Seitenansicht eines Autos an der Traktionsgrenze der Anordnung {0}: {1}, {2}. Vorderachslast {3}, Hinterachslast {4}; Antriebskraft vorn {5}, hinten {6}.",
    ),
    ("figure.traction.side_title", "{0}: {1} und nicht mehr, {2}"),
    ("figure.tractive", "Antriebskraft"),
    (
        "figure.turn_in_place.arrow",
        "Pfeil: die genutzte Reibung, dem Gleiten entgegen",
    ),
    ("figure.turn_in_place.centre", "Drehpunkt"),
    (
        "figure.turn_in_place.chart_describe",
        "Das Moment an dem Rad, das am meisten braucht, wächst im Verhältnis zur Reibung. Bei {0} ist es {1}.",
    ),
    (
        "figure.turn_in_place.chart_title",
        "Moment zum Wenden auf der Stelle über der Reibung",
    ),
    (
        "figure.turn_in_place.circle",
        "Kreis: alle Reibung der Aufstandsfläche",
    ),
    (
        "figure.turn_in_place.describe",
        "Draufsicht eines Autos, das nach rechts schaut und auf der Stelle gegen den Uhrzeigersinn dreht. Die rechten Räder schieben vorwärts, die linken rückwärts: jedes Vorderrad mit {0}, jedes Hinterrad mit {1}. Mittleres Moment {2} an einem Rad, Energie {3} für eine volle Drehung.",
    ),
    (
        "figure.turn_in_place.describe_cannot",
        "Draufsicht eines Autos mit der Anordnung {0}. {1}",
    ),
    (
        "figure.turn_in_place.moment",
        "Wenden auf der Stelle: {1} gedreht nach {0}",
    ),
    (
        "figure.turn_in_place.moment_describe",
        "Draufsicht eines Autos mit der Anordnung {0}, {1} nach Beginn der Drehung gegen den Uhrzeigersinn. Es hat sich um {2} gedreht; die Gierrate beträgt {3}. Der Schwerpunkt liegt {4} von seinem Ausgangsort. Am schnellsten gleitende Aufstandsfläche: {5}.",
    ),
    (
        "figure.turn_in_place.note_drift",
        "talwärts bei jeder langsamen Drehung",
    ),
    (
        "figure.turn_in_place.note_drives",
        "das Höchste, was das angetriebene Paar aufbringt",
    ),
    (
        "figure.turn_in_place.note_energy",
        "in Reifen und Boden für eine volle Drehung",
    ),
    (
        "figure.turn_in_place.note_full_turn",
        "für die erste volle Drehung",
    ),
    (
        "figure.turn_in_place.note_holds",
        "mit dem die andere Achse widersteht",
    ),
    (
        "figure.turn_in_place.note_left",
        "nach links: der Drehpunkt",
    ),
    (
        "figure.turn_in_place.note_lock",
        "Kreis der Vorderachse bei vollem Einschlag: nicht auf der Stelle",
    ),
    (
        "figure.turn_in_place.note_share",
        "davon schieben längs des Rades",
    ),
    (
        "figure.turn_in_place.note_slide",
        "am schnellsten gleitende Aufstandsfläche",
    ),
    (
        "figure.turn_in_place.note_torque",
        "im Mittel an jedem Rad (ein Motor gibt {0})",
    ),
    (
        "figure.turn_in_place.note_torque_alone",
        "im Mittel an jedem Rad",
    ),
    (
        "figure.turn_in_place.note_tread",
        "Profil verloren bei einer Drehung ({0} bis {1}, eine Annahme)",
    ),
    (
        "figure.turn_in_place.note_way",
        "vom Ausgangsort des Schwerpunkts",
    ),
    ("figure.turn_in_place.note_yaw", "Gierrate"),
    (
        "figure.turn_in_place.slide",
        "gestrichelt: Gleitgeschwindigkeit der Aufstandsfläche",
    ),
    (
        "figure.turn_in_place.spin_describe",
        "Gierrate über der Zeit. {0}",
    ),
    (
        "figure.turn_in_place.spin_title",
        "{0} für eine volle Drehung mit {1}",
    ),
    (
        "figure.turn_in_place.spin_title_plain",
        "Gierrate aus dem Stand",
    ),
    (
        "figure.turn_in_place.surface_no",
        "nicht möglich; {0} je Drehung",
    ),
    (
        "figure.turn_in_place.surface_yes",
        "möglich; {0} je Drehung",
    ),
    (
        "figure.turn_in_place.surfaces_describe",
        "Balken des mittleren Radmoments, das zum Wenden auf der Stelle nötig ist, je Fahrbahn: {0}.",
    ),
    (
        "figure.turn_in_place.surfaces_sub",
        "Anordnung {0}, ebener Boden.",
    ),
    (
        "figure.turn_in_place.surfaces_title",
        "{0} verlangt {1}-mal so viel Moment wie {2}",
    ),
    (
        "figure.turn_in_place.title",
        "Wenden auf der Stelle: Jede Aufstandsfläche gleitet",
    ),
    (
        "figure.turn_in_place.title_cannot",
        "{0} kann nicht auf der Stelle wenden",
    ),
    (
        "figure.turn_in_place.title_torque",
        "Wenden auf der Stelle verlangt {0} an jedem Rad",
    ),
    (
        "figure.turn_in_place.trace",
        "Linien: Spuren der Reifen am Boden",
    ),
    ("figure.weight", "Gewichtskraft"),
    ("figure.wheelbase", "Radstand {0}"),
    (
        "help.air.density",
        "Dichte der Luft. Auf Meereshöhe bei 15 °C: 1,225 kg/m³.",
    ),
    (
        "help.choice.differential_cost",
        "In der Einheit der anderen Kosten. Der Vorgabewert ist erfunden.",
    ),
    (
        "help.choice.disconnect_cost",
        "In der Einheit der anderen Kosten. Der Vorgabewert ist erfunden.",
    ),
    (
        "help.choice.gear_set_cost",
        "In der Einheit der anderen Kosten. Der Vorgabewert ist erfunden.",
    ),
    (
        "help.choice.half_shaft_cost",
        "In der Einheit der anderen Kosten. Der Vorgabewert ist erfunden.",
    ),
    (
        "help.choice.inverter_cost",
        "In der Einheit der anderen Kosten. Der Vorgabewert ist erfunden.",
    ),
    (
        "help.choice.least_range",
        "Über den gefahrenen Zyklus. Ohne Angabe genügt jede Reichweite.",
    ),
    (
        "help.choice.motor_cost",
        "In beliebiger Einheit. Der Vorgabewert ist erfunden.",
    ),
    (
        "help.choice.spread",
        "Jede Eingabe wird allein verändert, um diesen Anteil ihres Werts nach oben und unten.",
    ),
    (
        "help.choice.start_grade",
        "Das Auto muss darauf mit seinen Motoren aus dem Stand anfahren. Ohne Angabe muss es das nicht.",
    ),
    (
        "help.choice.start_surface",
        "Ein Belag der Tabelle der Kraftschlussbeiwerte.",
    ),
    (
        "help.choice.target_time",
        "Eine Anordnung, die länger braucht, erfüllt die Vorgabe nicht. Ohne Angabe genügt jede Zeit.",
    ),
    (
        "help.choice.torque_vectoring",
        "Ob die Motoren Drehmoment von links nach rechts verschieben müssen, ohne die Bremsen.",
    ),
    (
        "help.choice.turn_in_place",
        "Ob eine Anordnung das Auto durch Gegendrehen auf der Stelle wenden muss.",
    ),
    (
        "help.choice.turn_surface",
        "Ein Belag der Tabelle der Kraftschlussbeiwerte, eben.",
    ),
    (
        "help.choice.weight_cost",
        "Was geringere Kosten wert sind. Der Vorgabewert ist erfunden.",
    ),
    (
        "help.choice.weight_energy",
        "Was weniger Energie für die Strecke wert ist. Der Vorgabewert ist erfunden.",
    ),
    (
        "help.choice.weight_room",
        "Was zwischen den Hinterrädern frei bleibende Breite wert ist: dort liegt das Gepäck. Der Vorgabewert ist erfunden.",
    ),
    (
        "help.choice.weight_time",
        "Was eine kürzere Zeit bis 60 mph wert ist. Der Vorgabewert ist erfunden.",
    ),
    (
        "help.cornering.axle",
        "Achse, deren zwei Motoren gegeneinander arbeiten oder deren inneres Rad gebremst wird.",
    ),
    ("help.cornering.chart", "Was das Diagramm zeigt."),
    (
        "help.cornering.front_share",
        "Anteil des Giermoments, den eine Vorderradbremse erzeugt, während hinten Motoren den Rest erzeugen.",
    ),
    (
        "help.cornering.radius",
        "Radius der Bahn des Schwerpunkts. Das Auto fährt nach links; rechts ist das Spiegelbild.",
    ),
    (
        "help.cornering.speed",
        "Geschwindigkeit der stationären Kreisfahrt.",
    ),
    (
        "help.cornering.yaw_moment",
        "Giermoment zur Kurveninnenseite, das Motoren oder Bremsen erzeugen sollen.",
    ),
    (
        "help.idle_drag.acceleration",
        "Beschleunigung, bei der die Aufteilung des Drehmoments betrachtet wird; unter null bremsen die Motoren.",
    ),
    (
        "help.idle_drag.auxiliary_power",
        "Leistung von allem, was nicht antreibt: Licht, Pumpen, Heizung.",
    ),
    (
        "help.idle_drag.chart",
        "Was das Diagramm zeigt: Verluste eines mitlaufenden Motors, die beste Aufteilung, Energie oder Geschwindigkeit im Zyklus.",
    ),
    (
        "help.idle_drag.cycle",
        "Was gefahren wird: der veröffentlichte Zyklus WLTC Klasse 3b, eine konstante Geschwindigkeit oder ein eigener Zyklus.",
    ),
    (
        "help.idle_drag.regeneration_power",
        "Größte Leistung, mit der alle Motoren zusammen bremsen; den Rest nehmen die Bremsen.",
    ),
    (
        "help.idle_drag.speed",
        "Geschwindigkeit, bei der die Aufteilung des Drehmoments betrachtet wird, und die konstante Geschwindigkeit.",
    ),
    (
        "help.idle_drag.trace",
        "Ein eigener Zyklus: Zeilen mit Zeit in s und Geschwindigkeit in km/h. Der Kopf darf m/s oder mph nennen. In einer Szenariodatei und als Attribut auch die Adresse einer Datei mit den Zeilen.",
    ),
    (
        "help.launch.model",
        "Voll: Reifen haben Schlupf, die Last verlagert sich so schnell, wie die Federn es zulassen. Ideal: Reifen greifen sofort und die Last verlagert sich sofort, wie in den ersten Rechnungen auf Papier.",
    ),
    (
        "help.launch.slip_target",
        "Schlupf, den die Antriebsschlupfregelung hält. Ohne Angabe: der Schlupf bei größtem Kraftschluss.",
    ),
    (
        "help.launch.time",
        "Zeitpunkt der Fahrt, den die Seitenansicht zeigt.",
    ),
    (
        "help.launch.traction_control",
        "Ein: Die Motoren halten den Zielschlupf. Aus: Sie geben alles, was sie haben.",
    ),
    ("help.layout", "Die Anordnung, die das Bild zeigt."),
    (
        "help.layouts",
        "Die Anordnungen im Vergleich, benannt nach dem Ort ihrer Motoren.",
    ),
    (
        "help.load_transfer.acceleration",
        "Beschleunigung längs der Straße. Bremsen ist negativ.",
    ),
    (
        "help.load_transfer.speed",
        "Geschwindigkeit, bei der Luftwiderstand und Auftrieb wirken. Im Stand gibt es keine.",
    ),
    (
        "help.motor_split.drive_unit_cost",
        "Kosten eines Motors mit Wechselrichter und Getriebe, in beliebiger Einheit. Eine Annahme: Setzen Sie Ihre ein.",
    ),
    (
        "help.motor_split.drive_unit_mass",
        "Masse eines Motors mit Wechselrichter und Getriebe. Eine Annahme: Setzen Sie Ihre ein.",
    ),
    (
        "help.motor_split.speed",
        "Geschwindigkeit, bis zu der die Motoren die Traktionsgrenze erreichen sollen.",
    ),
    (
        "help.packaging.box_fill",
        "Volumen der Antriebseinheit durch das ihres äußeren Kastens.",
    ),
    (
        "help.packaging.clearance",
        "Bleibt ganz frei, für die Bewegung des Rads und für Schmutz.",
    ),
    (
        "help.packaging.gap",
        "Zwischen zwei Antriebseinheiten an einer Achse.",
    ),
    (
        "help.packaging.gear_power_density",
        "Leistung durch Volumen von Getriebe und Differenzial zusammen. Der Vorgabewert ist erfunden.",
    ),
    (
        "help.packaging.half_shaft_length",
        "Von der Radmitte bis zur Antriebseinheit. Eine kürzere Welle knickt ihre Gelenke zu weit.",
    ),
    (
        "help.packaging.inverter_power_density",
        "Leistung durch Volumen des Umrichters allein. Der Vorgabewert ist erfunden.",
    ),
    (
        "help.packaging.motor_power_density",
        "Leistung durch Volumen des Motors allein. Der Vorgabewert ist erfunden.",
    ),
    (
        "help.packaging.structure_width",
        "Breite, die Karosserie und Radaufhängung auf jeder Seite brauchen.",
    ),
    (
        "help.packaging.unit_height",
        "Höhe des äußeren Kastens der Einheit.",
    ),
    (
        "help.packaging.unit_length",
        "Der Kasten liegt mittig über der Achse.",
    ),
    (
        "help.surface.friction_peak",
        "Größter Kraftschlussbeiwert zwischen Reifen und Boden.",
    ),
    (
        "help.surface.friction_peak_left",
        "Größter Kraftschlussbeiwert unter den linken Rädern, wenn er ein anderer ist.",
    ),
    (
        "help.surface.friction_peak_right",
        "Größter Kraftschlussbeiwert unter den rechten Rädern, wenn er ein anderer ist.",
    ),
    (
        "help.surface.friction_sliding",
        "Reibwert eines gleitenden Reifens. Ohne Angabe und ohne Fahrbahn gilt der Haftbeiwert des Fahrzeugs selbst.",
    ),
    (
        "help.surface.friction_sliding_left",
        "Gleitreibbeiwert unter den linken Rädern, wenn er ein anderer ist.",
    ),
    (
        "help.surface.friction_sliding_right",
        "Gleitreibbeiwert unter den rechten Rädern, wenn er ein anderer ist.",
    ),
    (
        "help.surface.grade",
        "Steigung der Straße, Höhe durch waagerechte Strecke. Bergauf ist positiv.",
    ),
    (
        "help.surface.kind",
        "Eine Fahrbahn aus der veröffentlichten Tafel der Kraftschlussbeiwerte. Ohne Angabe: trockener Asphalt mit den Reifen des Fahrzeugs.",
    ),
    (
        "help.traction.front_axle_type",
        "Einzelradaufhängung oder eine Starrachse, deren Antriebsmoment Last vom rechten auf das linke Rad verlagert.",
    ),
    (
        "help.traction.front_differential",
        "Wie das Moment eines einzelnen vorderen Motors auf seine zwei Räder kommt.",
    ),
    (
        "help.traction.front_share",
        "Anteil der Vorderachse an der Antriebskraft, wenn er fest ist. Ohne Angabe gibt jede Achse, was sie kann.",
    ),
    (
        "help.traction.motor_limit",
        "Ob auch das Drehmoment der Motoren begrenzen darf oder nur Reifen und Boden.",
    ),
    (
        "help.traction.rear_axle_type",
        "Einzelradaufhängung oder eine Starrachse, deren Antriebsmoment Last vom rechten auf das linke Rad verlagert.",
    ),
    (
        "help.traction.rear_differential",
        "Wie das Moment eines einzelnen hinteren Motors auf seine zwei Räder kommt.",
    ),
    (
        "help.traction.speed",
        "Geschwindigkeit, bei der Luftwiderstand und Auftrieb wirken.",
    ),
    (
        "help.turn_in_place.front_to_rear_wheel_speed",
        "Drehzahl der Vorderräder durch die der Hinterräder beim Wenden auf der Stelle.",
    ),
    (
        "help.turn_in_place.time",
        "Zeitpunkt des Andrehens, den die Draufsicht zeigt. Ohne ihn wird die langsame stationäre Drehung gezeigt.",
    ),
    (
        "help.turn_in_place.wear_coefficient",
        "Abgeriebenes Laufflächenvolumen je Reibungsenergie. Eine Annahme: ohne sie gilt ein Wert, der am Abrieb im gewöhnlichen Fahrbetrieb festgemacht ist. Größenordnung auf Straßen: 0,001 bis 0,01 mm³/J.",
    ),
    (
        "help.turn_in_place.yaw_rate",
        "Gierrate, für welche die Motoren die Drehzahl der Räder einstellen.",
    ),
    (
        "help.vehicle.anti_lift_front",
        "Anteil der vorderen Laständerung, den die Lenker der Aufhängung statt der Federn tragen.",
    ),
    (
        "help.vehicle.anti_squat_rear",
        "Anteil der hinteren Laständerung, den die Lenker der Aufhängung statt der Federn tragen.",
    ),
    (
        "help.vehicle.axle_load_front",
        "Was eine Waage unter den Vorderrädern zeigt. Zusammen mit der Hinterachse gibt es Masse und Lage des Schwerpunkts, wo diese nicht angegeben sind.",
    ),
    (
        "help.vehicle.axle_load_rear",
        "Was eine Waage unter den Hinterrädern zeigt.",
    ),
    (
        "help.vehicle.base",
        "Ein erfundenes Beispielfahrzeug. Jedes andere Fahrzeugfeld ändert einen seiner Werte.",
    ),
    (
        "help.vehicle.battery_energy",
        "Nutzbare Energie der Batterie.",
    ),
    (
        "help.vehicle.battery_power",
        "Größte Leistung, die die Batterie allen Motoren zusammen gibt. Ohne Angabe: so viel, wie sie verlangen.",
    ),
    (
        "help.vehicle.bearing_loss",
        "Verlust in den Lagern eines Motors bei der Eckdrehzahl, als Anteil der größten Leistung. Der Wert ist erfunden.",
    ),
    (
        "help.vehicle.body",
        "Umriss der Karosserie im Bild. In die Rechnung geht er nicht ein.",
    ),
    (
        "help.vehicle.cg_height",
        "Höhe des Schwerpunkts über dem Boden.",
    ),
    (
        "help.vehicle.cg_to_front_axle",
        "Abstand des Schwerpunkts hinter der Vorderachse.",
    ),
    (
        "help.vehicle.copper_loss_induction",
        "Verlust in Ständer, Läufer und Wechselrichter einer Asynchronmaschine beim größten Drehmoment, als Anteil ihrer größten Leistung. Der Wert ist erfunden, bis Sie Ihren angeben.",
    ),
    (
        "help.vehicle.copper_loss_magnet",
        "Verlust in Kupfer und Wechselrichter eines Motors mit Permanentmagneten beim größten Drehmoment, als Anteil seiner größten Leistung. Der Wert ist erfunden, bis Sie Ihren angeben.",
    ),
    (
        "help.vehicle.cornering_stiffness_front",
        "Seitenkraft eines Vorderreifens je Schräglaufwinkel, bei kleinen Winkeln und ruhender Last.",
    ),
    (
        "help.vehicle.cornering_stiffness_rear",
        "Dasselbe für einen Hinterreifen.",
    ),
    (
        "help.vehicle.damping_ratio",
        "Dämpfung des Aufbaus auf seinen Federn, als Anteil der kritischen Dämpfung.",
    ),
    (
        "help.vehicle.disconnect",
        "Achsen, deren Motoren von den Rädern getrennt werden können, wenn sie kein Drehmoment machen.",
    ),
    (
        "help.vehicle.drag_area",
        "Luftwiderstandsbeiwert mal Stirnfläche.",
    ),
    (
        "help.vehicle.drag_height",
        "Höhe, in der der Luftwiderstand angreift. Ohne Angabe: die Schwerpunkthöhe.",
    ),
    (
        "help.vehicle.drive_efficiency",
        "Anteil der Leistung, der ankommt, von der Batterie zum Rad und zurück gleich.",
    ),
    (
        "help.vehicle.eddy_loss",
        "Eisenverlust durch Wirbelströme bei der Eckdrehzahl und vollem Feld, als Anteil der größten Leistung. Der Wert ist erfunden.",
    ),
    (
        "help.vehicle.final_drive_ratio",
        "Übersetzung zwischen Antriebswelle und Starrachse.",
    ),
    (
        "help.vehicle.front_machine",
        "Bauart der Motoren an der Vorderachse: mit Permanentmagneten oder Asynchronmaschine.",
    ),
    (
        "help.vehicle.gear_efficiency",
        "Anteil der Motorleistung, den das Getriebe weitergibt.",
    ),
    (
        "help.vehicle.hysteresis_loss",
        "Eisenverlust durch Hysterese bei der Eckdrehzahl und vollem Feld, als Anteil der größten Leistung. Der Wert ist erfunden.",
    ),
    (
        "help.vehicle.lift_area_front",
        "Auftriebsbeiwert der Vorderachse mal Stirnfläche. Abtrieb ist negativ.",
    ),
    (
        "help.vehicle.lift_area_rear",
        "Auftriebsbeiwert der Hinterachse mal Stirnfläche. Abtrieb ist negativ.",
    ),
    (
        "help.vehicle.magnetising_loss",
        "Kupferverlust des Stroms, der das Feld einer Asynchronmaschine macht, als Anteil ihrer größten Leistung. Der Wert ist erfunden.",
    ),
    (
        "help.vehicle.mass",
        "Masse des Fahrzeugs mit seiner Ladung.",
    ),
    (
        "help.vehicle.max_steer_angle",
        "Wie weit die Vorderräder nach jeder Seite einschlagen.",
    ),
    (
        "help.vehicle.motor_decline_speed",
        "Drehzahl des Motors, über der seine Leistung umgekehrt zur Drehzahl fällt. Ohne Angabe: keine.",
    ),
    (
        "help.vehicle.motor_max_speed",
        "Höchste Drehzahl des Motors. Ohne Angabe: keine.",
    ),
    ("help.vehicle.motor_power", "Spitzenleistung eines Motors."),
    (
        "help.vehicle.motor_ratio",
        "Übersetzung zwischen einem Motor und seinen Rädern.",
    ),
    (
        "help.vehicle.motor_torque",
        "Spitzenmoment eines Motors an seiner Welle.",
    ),
    (
        "help.vehicle.rear_machine",
        "Bauart der Motoren an der Hinterachse: mit Permanentmagneten oder Asynchronmaschine.",
    ),
    (
        "help.vehicle.ride_frequency_front",
        "Eigenfrequenz des Aufbaus auf den vorderen Federn.",
    ),
    (
        "help.vehicle.ride_frequency_rear",
        "Eigenfrequenz des Aufbaus auf den hinteren Federn.",
    ),
    (
        "help.vehicle.roll_stiffness_front_share",
        "Anteil der Vorderachse an der Wanksteifigkeit.",
    ),
    ("help.vehicle.rolling_resistance", "Rollwiderstandsbeiwert."),
    (
        "help.vehicle.rotor_inertia",
        "Trägheitsmoment eines Läufers um die eigene Achse.",
    ),
    (
        "help.vehicle.track_front",
        "Abstand zwischen den Vorderrädern.",
    ),
    (
        "help.vehicle.track_rear",
        "Abstand zwischen den Hinterrädern.",
    ),
    (
        "help.vehicle.tyre_friction",
        "Größter Kraftschlussbeiwert, den die eigenen Reifen des Fahrzeugs auf trockenem Asphalt haben.",
    ),
    (
        "help.vehicle.tyre_load_sensitivity",
        "Anteil seines Kraftschlusses, den ein Reifen verliert, wenn seine Last um die Bezugslast steigt.",
    ),
    (
        "help.vehicle.tyre_peak_slip",
        "Schlupf, bei dem der Kraftschluss eines Reifens am größten ist. Ohne Angabe oder ohne Radträgheit: Der Reifen greift sofort und braucht keinen Schlupf.",
    ),
    (
        "help.vehicle.tyre_pressure",
        "Reifendruck. Er bestimmt die Größe der Aufstandsfläche.",
    ),
    (
        "help.vehicle.tyre_reference_load",
        "Radlast, bei der der Kraftschlussbeiwert wie angegeben ist. Ohne Angabe: ein Viertel der Gewichtskraft.",
    ),
    (
        "help.vehicle.tyre_relaxation_length",
        "Strecke, die ein Reifen rollt, während sich sein Schlupf aufbaut.",
    ),
    (
        "help.vehicle.tyre_width_front",
        "Breite eines Vorderreifens, für das Bild.",
    ),
    (
        "help.vehicle.tyre_width_rear",
        "Breite eines Hinterreifens, für das Bild.",
    ),
    (
        "help.vehicle.weakening_loss",
        "Kupferverlust des Stroms, der das Feld der Magnete aufhöbe, als Anteil der größten Leistung. Über der Eckdrehzahl fließt ein Teil davon, mit Drehmoment und ohne. Der Wert ist erfunden.",
    ),
    (
        "help.vehicle.wheel_inertia",
        "Trägheitsmoment eines Rades mit Reifen um seine Achse.",
    ),
    ("help.vehicle.wheel_radius", "Rollradius der Räder."),
    ("help.vehicle.wheelbase", "Abstand zwischen den Achsen."),
    (
        "help.vehicle.windage_loss",
        "Verlust eines Läufers in seiner Luft bei der Eckdrehzahl, als Anteil der größten Leistung. Der Wert ist erfunden.",
    ),
    (
        "help.vehicle.yaw_inertia",
        "Trägheitsmoment um die Hochachse; m·a·b, wo es nicht angegeben ist (übliche Praxis).",
    ),
    ("input.air.density", "Luftdichte"),
    (
        "input.choice.differential_cost",
        "Kosten eines Differenzials",
    ),
    ("input.choice.disconnect_cost", "Kosten einer Trennkupplung"),
    ("input.choice.gear_set_cost", "Kosten eines Getriebes"),
    ("input.choice.half_shaft_cost", "Kosten einer Seitenwelle"),
    ("input.choice.inverter_cost", "Kosten eines Umrichters"),
    ("input.choice.least_range", "kürzeste Reichweite"),
    ("input.choice.motor_cost", "Kosten eines Motors"),
    ("input.choice.spread", "Bereich der Veränderung"),
    ("input.choice.start_grade", "Steigung zum Anfahren"),
    ("input.choice.start_surface", "Belag dieser Steigung"),
    ("input.choice.target_time", "längste Zeit bis 60 mph"),
    ("input.choice.torque_vectoring", "muss Drehmoment verteilen"),
    ("input.choice.turn_in_place", "muss auf der Stelle wenden"),
    ("input.choice.turn_surface", "Belag, auf dem es wendet"),
    ("input.choice.weight_cost", "Gewicht der Kosten"),
    ("input.choice.weight_energy", "Gewicht der Energie"),
    ("input.choice.weight_room", "Gewicht des Platzes hinten"),
    ("input.choice.weight_time", "Gewicht der Zeit"),
    ("input.cornering.axle", "Achse, die es erzeugt"),
    ("input.cornering.chart", "Diagramm"),
    (
        "input.cornering.front_share",
        "Anteil der Bremsen im gemischten Fall",
    ),
    ("input.cornering.radius", "Kurvenradius"),
    ("input.cornering.speed", "Geschwindigkeit"),
    ("input.cornering.yaw_moment", "gewünschtes Giermoment"),
    ("input.idle_drag.acceleration", "Beschleunigung"),
    ("input.idle_drag.auxiliary_power", "Nebenverbraucher"),
    ("input.idle_drag.chart", "Diagramm"),
    ("input.idle_drag.cycle", "Fahrzyklus"),
    (
        "input.idle_drag.regeneration_power",
        "Rekuperationsleistung der Motoren",
    ),
    ("input.idle_drag.speed", "Geschwindigkeit"),
    ("input.idle_drag.trace", "eigener Zyklus (CSV-Datei)"),
    ("input.launch.model", "Modell"),
    ("input.launch.slip_target", "Zielschlupf"),
    ("input.launch.time", "gezeigter Zeitpunkt"),
    ("input.launch.traction_control", "Antriebsschlupfregelung"),
    ("input.layout", "gezeigte Anordnung"),
    ("input.layouts", "Anordnungen"),
    ("input.load_transfer.acceleration", "Beschleunigung"),
    ("input.load_transfer.speed", "Geschwindigkeit"),
    (
        "input.motor_split.drive_unit_cost",
        "Kosten einer Antriebseinheit",
    ),
    (
        "input.motor_split.drive_unit_mass",
        "Masse einer Antriebseinheit",
    ),
    ("input.motor_split.speed", "Geschwindigkeit"),
    (
        "input.packaging.box_fill",
        "Anteil des Kastens, den eine Einheit füllt",
    ),
    ("input.packaging.clearance", "Freigang neben einem Rad"),
    ("input.packaging.gap", "Abstand zwischen zwei Einheiten"),
    (
        "input.packaging.gear_power_density",
        "Getriebe und Differenzial, Leistung je Liter",
    ),
    (
        "input.packaging.half_shaft_length",
        "kleinste Länge einer Seitenwelle",
    ),
    (
        "input.packaging.inverter_power_density",
        "Umrichter, Leistung je Liter",
    ),
    (
        "input.packaging.motor_power_density",
        "Motor, Leistung je Liter",
    ),
    (
        "input.packaging.structure_width",
        "Träger und Radaufhängung neben einem Rad",
    ),
    ("input.packaging.unit_height", "Höhe einer Einheit"),
    (
        "input.packaging.unit_length",
        "Länge einer Einheit längs des Autos",
    ),
    ("input.surface.friction_peak", "Haftbeiwert"),
    ("input.surface.friction_peak_left", "Haftbeiwert links"),
    ("input.surface.friction_peak_right", "Haftbeiwert rechts"),
    ("input.surface.friction_sliding", "Gleitbeiwert"),
    ("input.surface.friction_sliding_left", "Gleitbeiwert links"),
    (
        "input.surface.friction_sliding_right",
        "Gleitbeiwert rechts",
    ),
    ("input.surface.grade", "Steigung"),
    ("input.surface.kind", "Fahrbahn"),
    ("input.traction.front_axle_type", "Vorderachse"),
    ("input.traction.front_differential", "Differenzial vorn"),
    ("input.traction.front_share", "Kraftanteil vorn"),
    ("input.traction.motor_limit", "Motoren"),
    ("input.traction.rear_axle_type", "Hinterachse"),
    ("input.traction.rear_differential", "Differenzial hinten"),
    ("input.traction.speed", "Geschwindigkeit"),
    (
        "input.turn_in_place.front_to_rear_wheel_speed",
        "Raddrehzahl vorn zu hinten",
    ),
    ("input.turn_in_place.time", "gezeigter Zeitpunkt"),
    ("input.turn_in_place.wear_coefficient", "Abriebbeiwert"),
    ("input.turn_in_place.yaw_rate", "verlangte Gierrate"),
    ("input.vehicle.anti_lift_front", "Anfahr-Nickausgleich vorn"),
    (
        "input.vehicle.anti_squat_rear",
        "Anfahr-Nickausgleich hinten",
    ),
    ("input.vehicle.axle_load_front", "Vorderachse auf der Waage"),
    ("input.vehicle.axle_load_rear", "Hinterachse auf der Waage"),
    ("input.vehicle.base", "Fahrzeug"),
    ("input.vehicle.battery_energy", "Batterie"),
    ("input.vehicle.battery_power", "Batterieleistung"),
    ("input.vehicle.bearing_loss", "Lagerverlust"),
    ("input.vehicle.body", "Karosserieumriss"),
    ("input.vehicle.cg_height", "Schwerpunkthöhe"),
    ("input.vehicle.cg_to_front_axle", "Schwerpunktabstand vorn"),
    (
        "input.vehicle.copper_loss_induction",
        "Kupferverlust, Asynchronmaschine",
    ),
    ("input.vehicle.copper_loss_magnet", "Kupferverlust, Magnete"),
    (
        "input.vehicle.cornering_stiffness_front",
        "Schräglaufsteifigkeit, Vorderreifen",
    ),
    (
        "input.vehicle.cornering_stiffness_rear",
        "Schräglaufsteifigkeit, Hinterreifen",
    ),
    ("input.vehicle.damping_ratio", "Dämpfungsgrad"),
    ("input.vehicle.disconnect", "Achstrennung"),
    ("input.vehicle.drag_area", "Luftwiderstandsfläche"),
    (
        "input.vehicle.drag_height",
        "Angriffshöhe des Luftwiderstands",
    ),
    (
        "input.vehicle.drive_efficiency",
        "Wirkungsgrad des Antriebs, Batterie bis Rad",
    ),
    ("input.vehicle.eddy_loss", "Wirbelstromverlust"),
    ("input.vehicle.final_drive_ratio", "Achsübersetzung"),
    ("input.vehicle.front_machine", "Motor vorn"),
    ("input.vehicle.gear_efficiency", "Getriebewirkungsgrad"),
    ("input.vehicle.hysteresis_loss", "Hystereseverlust"),
    ("input.vehicle.lift_area_front", "Auftriebsfläche vorn"),
    ("input.vehicle.lift_area_rear", "Auftriebsfläche hinten"),
    ("input.vehicle.magnetising_loss", "Magnetisierungsverlust"),
    ("input.vehicle.mass", "Masse"),
    ("input.vehicle.max_steer_angle", "Lenkwinkel am Anschlag"),
    (
        "input.vehicle.motor_decline_speed",
        "zweite Eckdrehzahl des Motors",
    ),
    ("input.vehicle.motor_max_speed", "Höchstdrehzahl des Motors"),
    ("input.vehicle.motor_power", "Motorleistung"),
    ("input.vehicle.motor_ratio", "Motorübersetzung"),
    ("input.vehicle.motor_torque", "Motormoment"),
    ("input.vehicle.rear_machine", "Motor hinten"),
    ("input.vehicle.ride_frequency_front", "Aufbaufrequenz vorn"),
    ("input.vehicle.ride_frequency_rear", "Aufbaufrequenz hinten"),
    (
        "input.vehicle.roll_stiffness_front_share",
        "Wanksteifigkeitsanteil vorn",
    ),
    ("input.vehicle.rolling_resistance", "Rollwiderstand"),
    ("input.vehicle.rotor_inertia", "Läuferträgheit"),
    ("input.vehicle.track_front", "Spurweite vorn"),
    ("input.vehicle.track_rear", "Spurweite hinten"),
    ("input.vehicle.tyre_friction", "Haftbeiwert der Reifen"),
    ("input.vehicle.tyre_load_sensitivity", "Lastempfindlichkeit"),
    (
        "input.vehicle.tyre_peak_slip",
        "Schlupf bei größtem Kraftschluss",
    ),
    ("input.vehicle.tyre_pressure", "Reifendruck"),
    ("input.vehicle.tyre_reference_load", "Bezugsradlast"),
    ("input.vehicle.tyre_relaxation_length", "Einlauflänge"),
    ("input.vehicle.tyre_width_front", "Reifenbreite vorn"),
    ("input.vehicle.tyre_width_rear", "Reifenbreite hinten"),
    ("input.vehicle.weakening_loss", "Feldschwächverlust"),
    ("input.vehicle.wheel_inertia", "Radträgheit"),
    ("input.vehicle.wheel_radius", "Radhalbmesser"),
    ("input.vehicle.wheelbase", "Radstand"),
    ("input.vehicle.windage_loss", "Luftreibung im Motor"),
    ("input.vehicle.yaw_inertia", "Gierträgheitsmoment"),
    ("option.as_fitted", "wie verbaut"),
    ("option.best_split", "beste Aufteilung"),
    ("option.both", "vorn und hinten"),
    ("option.constant_radius", "Kreisfahrt mit festem Radius"),
    ("option.energy", "Energie im Zyklus"),
    ("option.front", "vorn"),
    ("option.full", "volles Modell"),
    ("option.ideal", "idealer Kraftschluss"),
    ("option.idle_losses", "Verluste eines mitlaufenden Motors"),
    ("option.independent", "Einzelradaufhängung"),
    ("option.induction", "Asynchronmaschine"),
    ("option.locked", "gesperrt"),
    ("option.none", "keine"),
    ("option.off", "aus"),
    ("option.on", "ein"),
    ("option.open", "offen"),
    ("option.open_with_brakes", "offen, mit Bremseingriff"),
    ("option.own", "eigener Zyklus"),
    ("option.permanent_magnet", "Permanentmagnete"),
    ("option.rear", "hinten"),
    ("option.saloon", "Limousine"),
    ("option.small_car", "Kleinwagen"),
    ("option.solid", "Starrachse"),
    ("option.speed", "Geschwindigkeit im Zyklus"),
    ("option.sports_car", "Sportwagen"),
    ("option.steady", "konstante Geschwindigkeit"),
    ("option.step_steer", "Lenkwinkelsprung"),
    ("option.unlimited", "unbegrenzt"),
    ("option.utility", "Nutzfahrzeug"),
    ("option.wltc", "WLTC Klasse 3b"),
    ("option.yaw_moment", "Giermoment über Querbeschleunigung"),
    ("output.choice.because", "warum"),
    (
        "output.choice.becomes.battery_energy",
        "Empfehlung stattdessen (die Batterie)",
    ),
    (
        "output.choice.becomes.cg_height",
        "Empfehlung stattdessen (die Schwerpunkthöhe)",
    ),
    (
        "output.choice.becomes.friction_peak",
        "Empfehlung stattdessen (die Reibung)",
    ),
    (
        "output.choice.becomes.inverter_cost",
        "Empfehlung stattdessen (die Kosten eines Umrichters)",
    ),
    (
        "output.choice.becomes.least_range",
        "Empfehlung stattdessen (die verlangte Reichweite)",
    ),
    (
        "output.choice.becomes.mass",
        "Empfehlung stattdessen (die Masse)",
    ),
    (
        "output.choice.becomes.motor_cost",
        "Empfehlung stattdessen (die Kosten eines Motors)",
    ),
    (
        "output.choice.becomes.motor_power",
        "Empfehlung stattdessen (die Motorleistung)",
    ),
    (
        "output.choice.becomes.motor_torque",
        "Empfehlung stattdessen (das Motormoment)",
    ),
    (
        "output.choice.becomes.start_grade",
        "Empfehlung stattdessen (die Steigung)",
    ),
    (
        "output.choice.becomes.target_time",
        "Empfehlung stattdessen (die Zielzeit)",
    ),
    (
        "output.choice.becomes.weight_cost",
        "Empfehlung stattdessen (das Gewicht der Kosten)",
    ),
    (
        "output.choice.becomes.weight_energy",
        "Empfehlung stattdessen (das Gewicht der Energie)",
    ),
    (
        "output.choice.becomes.weight_room",
        "Empfehlung stattdessen (das Gewicht des Platzes)",
    ),
    (
        "output.choice.becomes.weight_time",
        "Empfehlung stattdessen (das Gewicht der Zeit)",
    ),
    (
        "output.choice.changes_at.battery_energy",
        "Empfindlichkeit gegen die Batterie",
    ),
    (
        "output.choice.changes_at.cg_height",
        "Empfindlichkeit gegen die Schwerpunkthöhe",
    ),
    (
        "output.choice.changes_at.friction_peak",
        "Empfindlichkeit gegen die Reibung",
    ),
    (
        "output.choice.changes_at.inverter_cost",
        "Empfindlichkeit gegen die Kosten eines Umrichters",
    ),
    (
        "output.choice.changes_at.least_range",
        "Empfindlichkeit gegen die verlangte Reichweite",
    ),
    (
        "output.choice.changes_at.mass",
        "Empfindlichkeit gegen die Masse",
    ),
    (
        "output.choice.changes_at.motor_cost",
        "Empfindlichkeit gegen die Kosten eines Motors",
    ),
    (
        "output.choice.changes_at.motor_power",
        "Empfindlichkeit gegen die Motorleistung",
    ),
    (
        "output.choice.changes_at.motor_torque",
        "Empfindlichkeit gegen das Motormoment",
    ),
    (
        "output.choice.changes_at.start_grade",
        "Empfindlichkeit gegen die Steigung",
    ),
    (
        "output.choice.changes_at.target_time",
        "Empfindlichkeit gegen die Zielzeit",
    ),
    (
        "output.choice.changes_at.weight_cost",
        "Empfindlichkeit gegen das Gewicht der Kosten",
    ),
    (
        "output.choice.changes_at.weight_energy",
        "Empfindlichkeit gegen das Gewicht der Energie",
    ),
    (
        "output.choice.changes_at.weight_room",
        "Empfindlichkeit gegen das Gewicht des Platzes",
    ),
    (
        "output.choice.changes_at.weight_time",
        "Empfindlichkeit gegen das Gewicht der Zeit",
    ),
    ("output.choice.cost", "relative Kosten"),
    ("output.choice.differentials", "Differenziale"),
    ("output.choice.disconnects", "Trennkupplungen"),
    ("output.choice.energy_per_km", "Energie für die Strecke"),
    ("output.choice.feasible", "erfüllt die Vorgabe"),
    ("output.choice.gear_sets", "Getriebe"),
    ("output.choice.half_shafts", "Seitenwellen"),
    ("output.choice.inverters", "Umrichter"),
    ("output.choice.limit", "Traktionsgrenze"),
    (
        "output.choice.limit_dry_earth",
        "Traktionsgrenze, trockener Erdweg",
    ),
    ("output.choice.limit_gravel", "Traktionsgrenze, Schotter"),
    ("output.choice.limit_ice", "Traktionsgrenze, Eis"),
    ("output.choice.limit_snow", "Traktionsgrenze, Schnee"),
    ("output.choice.limit_wet", "Traktionsgrenze, nasser Asphalt"),
    (
        "output.choice.limit_wet_concrete",
        "Traktionsgrenze, nasser Beton",
    ),
    (
        "output.choice.limit_wet_earth",
        "Traktionsgrenze, nasser Erdweg",
    ),
    ("output.choice.motors", "Motoren"),
    ("output.choice.on_pareto_front", "auf der Paretofront"),
    ("output.choice.parts", "Teile"),
    ("output.choice.range", "Reichweite"),
    ("output.choice.reason", "Urteil"),
    ("output.choice.recommended", "empfohlene Anordnung"),
    (
        "output.choice.room_left",
        "an der engeren angetriebenen Achse übrig",
    ),
    ("output.choice.room_share", "hinten frei bleibende Breite"),
    ("output.choice.score", "Wertung"),
    (
        "output.choice.start_margin",
        "auf der Steigung übrige Beschleunigung",
    ),
    ("output.choice.time_to_60_mph", "Zeit bis 60 mph"),
    ("output.choice.turns_in_place", "wendet auf der Stelle"),
    ("output.choice.volume", "Volumen der Antriebseinheiten"),
    ("output.choice.yaw_moment", "Giermoment der Motoren"),
    ("output.cornering.ackermann_angle", "Ackermannwinkel"),
    (
        "output.cornering.characteristic_speed",
        "charakteristische Geschwindigkeit",
    ),
    (
        "output.cornering.constant_radius.understeer_gradient",
        "Eigenlenkgradient der Fahrt auf festem Radius, bis 2 m/s²",
    ),
    (
        "output.cornering.critical_speed",
        "kritische Geschwindigkeit",
    ),
    (
        "output.cornering.drive_force",
        "Antriebskraft, die die Geschwindigkeit hält",
    ),
    ("output.cornering.drive_power", "Leistung aus der Batterie"),
    (
        "output.cornering.lateral_acceleration",
        "Querbeschleunigung",
    ),
    ("output.cornering.limit", "was sie beendet"),
    (
        "output.cornering.limit_lateral_acceleration",
        "Grenze auf diesem Radius",
    ),
    (
        "output.cornering.limit_speed",
        "höchste Geschwindigkeit auf diesem Radius",
    ),
    ("output.cornering.max", "größtes Giermoment"),
    ("output.cornering.sideslip_angle", "Schwimmwinkel"),
    (
        "output.cornering.single_track.lateral_acceleration_gain",
        "Querbeschleunigung je Lenkwinkel",
    ),
    (
        "output.cornering.single_track.sideslip_angle",
        "Schwimmwinkel, Einspurmodell",
    ),
    (
        "output.cornering.single_track.steer_angle",
        "Lenkwinkel, Einspurmodell",
    ),
    (
        "output.cornering.single_track.yaw_rate_gain",
        "Gierrate je Lenkwinkel",
    ),
    ("output.cornering.steer_angle", "Lenkwinkel"),
    (
        "output.cornering.step_steer.overshoot",
        "Lenkwinkelsprung: Überschwingen der Gierrate",
    ),
    (
        "output.cornering.step_steer.rise_time",
        "Lenkwinkelsprung: Anstiegszeit der Gierrate",
    ),
    ("output.cornering.turn", "die Kurvenfahrt"),
    ("output.cornering.understeer_gradient", "Eigenlenkgradient"),
    (
        "output.cornering.vectoring.brakes.deceleration",
        "eine Bremse: Verzögerung, wenn nichts die Geschwindigkeit hält",
    ),
    (
        "output.cornering.vectoring.brakes.force",
        "eine Bremse: Kraft am Rad",
    ),
    (
        "output.cornering.vectoring.brakes.heat",
        "eine Bremse: Wärme darin",
    ),
    (
        "output.cornering.vectoring.brakes.power",
        "eine Bremse: Leistung aus der Batterie für gleiche Geschwindigkeit",
    ),
    (
        "output.cornering.vectoring.brakes.steer_angle",
        "eine Bremse: Lenkwinkel",
    ),
    (
        "output.cornering.vectoring.brakes.verdict",
        "eine Bremse: geht es?",
    ),
    (
        "output.cornering.vectoring.mixed.brake_force",
        "Bremse vorn, Motoren hinten: Kraft der Bremse",
    ),
    (
        "output.cornering.vectoring.mixed.deceleration",
        "Bremse vorn, Motoren hinten: Verzögerung, wenn nichts die Geschwindigkeit hält",
    ),
    (
        "output.cornering.vectoring.mixed.heat",
        "Bremse vorn, Motoren hinten: Wärme in der Bremse",
    ),
    (
        "output.cornering.vectoring.mixed.motor_force",
        "Bremse vorn, Motoren hinten: Kraft an jedem Motorrad",
    ),
    (
        "output.cornering.vectoring.mixed.power",
        "Bremse vorn, Motoren hinten: Leistung aus der Batterie",
    ),
    (
        "output.cornering.vectoring.mixed.steer_angle",
        "Bremse vorn, Motoren hinten: Lenkwinkel",
    ),
    (
        "output.cornering.vectoring.mixed.verdict",
        "Bremse vorn, Motoren hinten: geht es?",
    ),
    (
        "output.cornering.vectoring.motors.force",
        "zwei Motoren: Kraft an jedem Rad",
    ),
    (
        "output.cornering.vectoring.motors.power",
        "zwei Motoren: Leistung aus der Batterie",
    ),
    (
        "output.cornering.vectoring.motors.steer_angle",
        "zwei Motoren: Lenkwinkel",
    ),
    (
        "output.cornering.vectoring.motors.verdict",
        "zwei Motoren: geht es?",
    ),
    (
        "output.idle_drag.booster_time_share",
        "Zeit mit Antrieb beider Achsen",
    ),
    (
        "output.idle_drag.both_axles_above",
        "beide Achsen treiben ab",
    ),
    ("output.idle_drag.cycle_distance", "Strecke des Zyklus"),
    ("output.idle_drag.energy_per_km", "Verbrauch"),
    ("output.idle_drag.follows_cycle", "folgt dem Zyklus"),
    ("output.idle_drag.force_at_wheels", "Kraft an den Rädern"),
    (
        "output.idle_drag.front_torque_share",
        "Anteil der Vorderachse am Drehmoment",
    ),
    (
        "output.idle_drag.idle_loss_induction",
        "Verlust einer mitlaufenden Asynchronmaschine",
    ),
    (
        "output.idle_drag.idle_loss_per_km",
        "Verlust in mitlaufenden Motoren",
    ),
    (
        "output.idle_drag.idle_loss_permanent_magnet",
        "Verlust eines mitlaufenden Motors mit Magneten",
    ),
    (
        "output.idle_drag.motor_loss",
        "Verlust in den Motoren jetzt",
    ),
    (
        "output.idle_drag.motor_loss_per_km",
        "Verlust in den Motoren",
    ),
    ("output.idle_drag.motor_speed", "Drehzahl der Motoren"),
    ("output.idle_drag.primary", "wer antreibt"),
    ("output.idle_drag.range", "Reichweite"),
    (
        "output.idle_drag.range_lost_to_idle",
        "Reichweite, die mitlaufende Motoren kosten",
    ),
    ("output.idle_drag.road_load", "Fahrwiderstand"),
    (
        "output.idle_drag.saved_by_split",
        "erspart durch die beste Aufteilung",
    ),
    (
        "output.launch.end_speed",
        "Geschwindigkeit am Ende der Fahrt",
    ),
    (
        "output.launch.front_grip_limited_until",
        "Vorderreifen begrenzen bis",
    ),
    ("output.launch.front_peak_slip", "größter Schlupf vorn"),
    ("output.launch.front_phases", "was vorn begrenzt"),
    (
        "output.launch.motor_energy",
        "Energie der Motorwellen, bis 60 mph",
    ),
    ("output.launch.outcome", "Ende der Fahrt"),
    (
        "output.launch.quarter_mile_speed",
        "Geschwindigkeit an der Viertelmeile",
    ),
    (
        "output.launch.quarter_mile_time",
        "Zeit für die Viertelmeile",
    ),
    (
        "output.launch.quarter_mile_time_after_rollout",
        "Zeit für die Viertelmeile, ohne Rollout",
    ),
    (
        "output.launch.rear_grip_limited_until",
        "Hinterreifen begrenzen bis",
    ),
    ("output.launch.rear_peak_slip", "größter Schlupf hinten"),
    ("output.launch.rear_phases", "was hinten begrenzt"),
    (
        "output.launch.rollout_time",
        "Zeit für den ersten Fuß (Rollout)",
    ),
    (
        "output.launch.speed_at_time",
        "Geschwindigkeit zum gezeigten Zeitpunkt",
    ),
    ("output.launch.time_to_100_km_h", "Zeit bis 100 km/h"),
    (
        "output.launch.time_to_100_km_h_after_rollout",
        "Zeit bis 100 km/h, ohne Rollout",
    ),
    ("output.launch.time_to_160_km_h", "Zeit bis 160 km/h"),
    (
        "output.launch.time_to_160_km_h_after_rollout",
        "Zeit bis 160 km/h, ohne Rollout",
    ),
    ("output.launch.time_to_60_mph", "Zeit bis 60 mph"),
    (
        "output.launch.time_to_60_mph_after_rollout",
        "Zeit bis 60 mph, ohne Rollout",
    ),
    ("output.launch.tyre_heat", "Wärme aus Schlupf, bis 60 mph"),
    (
        "output.load_transfer.drop_rear",
        "Absenken des Aufbaus über der Hinterachse",
    ),
    ("output.load_transfer.front_axle_load", "Vorderachslast"),
    (
        "output.load_transfer.front_lift_acceleration",
        "Beschleunigung, bei der die Vorderachse abhebt",
    ),
    ("output.load_transfer.front_load_share", "Lastanteil vorn"),
    ("output.load_transfer.heave", "Hub des Schwerpunkts"),
    (
        "output.load_transfer.pitch_angle",
        "Nickwinkel, Bug nach unten positiv",
    ),
    ("output.load_transfer.rear_axle_load", "Hinterachslast"),
    (
        "output.load_transfer.rear_to_front_ratio",
        "Last hinten zu vorn",
    ),
    (
        "output.load_transfer.rise_front",
        "Anheben des Aufbaus über der Vorderachse",
    ),
    (
        "output.load_transfer.static_front_axle_load",
        "Vorderachslast im Stand auf der Ebene",
    ),
    (
        "output.load_transfer.static_rear_axle_load",
        "Hinterachslast im Stand auf der Ebene",
    ),
    (
        "output.load_transfer.transferred_load",
        "Zuwachs der Hinterachslast gegenüber dem Stand auf der Ebene",
    ),
    (
        "output.load_transfer.two_to_one_acceleration",
        "Beschleunigung, bei der die Last 2 : 1 steht",
    ),
    (
        "output.motor_split.drive_cost",
        "Kosten der Antriebseinheiten",
    ),
    (
        "output.motor_split.drive_mass",
        "Masse der Antriebseinheiten",
    ),
    (
        "output.motor_split.front_load_share_at_limit",
        "Lastanteil vorn an der Grenze",
    ),
    (
        "output.motor_split.front_load_share_at_rest",
        "Lastanteil vorn im Stand",
    ),
    (
        "output.motor_split.like_motors_limit",
        "Grenze mit gleichem Moment von jedem Motor",
    ),
    (
        "output.motor_split.limit_gained",
        "Gewinn an der Grenze gegenüber weniger Motoren",
    ),
    (
        "output.motor_split.matching_acceleration",
        "Beschleunigung, bei der Moment und Last zusammenpassen",
    ),
    (
        "output.motor_split.motor_power_needed",
        "Leistung eines Motors, die die Grenze erreicht",
    ),
    (
        "output.motor_split.motor_torque_needed",
        "Moment eines Motors, das die Grenze erreicht",
    ),
    ("output.motor_split.motors", "Motoren"),
    ("output.motor_split.parts", "Teile"),
    (
        "output.motor_split.time_saved",
        "Zeitgewinn gegenüber der schnellsten mit weniger Motoren",
    ),
    (
        "output.motor_split.time_to_60_mph",
        "Zeit bis 60 mph, idealer Kraftschluss",
    ),
    (
        "output.motor_split.torque_front_share",
        "Momentanteil vorn bei gleichen Motoren",
    ),
    ("output.motor_split.traction_limit", "Traktionsgrenze"),
    (
        "output.motor_split.yaw_moment",
        "Giermoment, Motoren links gegen rechts",
    ),
    (
        "output.motor_split.yaw_moment_gained",
        "Gewinn an Giermoment gegenüber weniger Motoren",
    ),
    (
        "output.packaging.drive_volume",
        "Volumen aller Antriebseinheiten",
    ),
    (
        "output.packaging.extraordinary",
        "über 16 kW/L, was in der Branche als außerordentlich gilt",
    ),
    ("output.packaging.fits", "passt"),
    (
        "output.packaging.front_left_with_one",
        "vorn übrig mit einer Einheit",
    ),
    (
        "output.packaging.front_left_with_two",
        "vorn übrig mit zwei Einheiten",
    ),
    ("output.packaging.front_room", "Platz an der Vorderachse"),
    (
        "output.packaging.front_wheel_reach",
        "Ausladung eines Vorderrads nach innen am Anschlag",
    ),
    (
        "output.packaging.power_density",
        "Leistungsdichte des ganzen Satzes",
    ),
    (
        "output.packaging.rear_left_with_one",
        "hinten übrig mit einer Einheit",
    ),
    (
        "output.packaging.rear_left_with_two",
        "hinten übrig mit zwei Einheiten",
    ),
    ("output.packaging.rear_room", "Platz an der Hinterachse"),
    ("output.packaging.reason", "warum"),
    (
        "output.packaging.room_left",
        "an der engeren angetriebenen Achse übrig",
    ),
    (
        "output.packaging.swept_area",
        "Fläche, die ein Vorderrad überstreicht",
    ),
    (
        "output.packaging.unit_volume",
        "Volumen einer Antriebseinheit",
    ),
    (
        "output.packaging.unit_width",
        "Breite einer Antriebseinheit",
    ),
    ("output.traction.acceleration", "Traktionsgrenze"),
    (
        "output.traction.front_adhesion_utilisation",
        "Kraftschlussausnutzung vorn",
    ),
    (
        "output.traction.front_axle_load",
        "Vorderachslast an der Grenze",
    ),
    (
        "output.traction.front_lift_acceleration",
        "Beschleunigung, bei der die Vorderachse abhebt",
    ),
    ("output.traction.front_tractive_force", "Antriebskraft vorn"),
    (
        "output.traction.ideal_front_share_at_rest",
        "idealer Anteil vorn im Stand",
    ),
    ("output.traction.limited_by", "Ursache der Grenze"),
    (
        "output.traction.rear_adhesion_utilisation",
        "Kraftschlussausnutzung hinten",
    ),
    (
        "output.traction.rear_axle_load",
        "Hinterachslast an der Grenze",
    ),
    (
        "output.traction.rear_tractive_force",
        "Antriebskraft hinten",
    ),
    ("output.traction.tractive_force", "Antriebskraft"),
    (
        "output.traction.two_to_one_acceleration",
        "Beschleunigung, bei der die Last 2 : 1 steht",
    ),
    (
        "output.turn_in_place.available_wheel_torque",
        "Moment, das ein Motor seinem Rad gibt",
    ),
    (
        "output.turn_in_place.drift_per_turn",
        "Abdrift talwärts bei einer langsamen Drehung",
    ),
    (
        "output.turn_in_place.drilling_moment",
        "Bohrmoment der gleitenden Aufstandsflächen",
    ),
    (
        "output.turn_in_place.drilling_moment_bound",
        "Bohrmoment, obere Schranke",
    ),
    (
        "output.turn_in_place.driving_moment",
        "Moment des angetriebenen Paares",
    ),
    (
        "output.turn_in_place.energy_per_turn",
        "Energie für eine volle Drehung",
    ),
    (
        "output.turn_in_place.energy_per_turn_bound",
        "Energie für eine volle Drehung, obere Schranke mit Bohrmoment",
    ),
    (
        "output.turn_in_place.feasible",
        "kann auf der Stelle wenden",
    ),
    (
        "output.turn_in_place.friction_used_lengthwise",
        "Anteil der Reibung, der längs genutzt wird",
    ),
    (
        "output.turn_in_place.front_patch_length",
        "Länge der Aufstandsfläche vorn",
    ),
    (
        "output.turn_in_place.front_tractive_force_per_wheel",
        "Antriebskraft, ein Vorderrad",
    ),
    (
        "output.turn_in_place.front_wheel_torque",
        "Moment, ein Vorderrad",
    ),
    (
        "output.turn_in_place.full_lock_centre_behind_front",
        "voller Einschlag: Drehpunkt hinter der Vorderachse",
    ),
    (
        "output.turn_in_place.full_lock_centre_to_left",
        "voller Einschlag: Drehpunkt nach links",
    ),
    (
        "output.turn_in_place.full_lock_in_place",
        "voller Einschlag: wendet auf der Stelle",
    ),
    (
        "output.turn_in_place.full_lock_sweep_radius",
        "voller Einschlag: Radius des Kreises der Vorderachse",
    ),
    (
        "output.turn_in_place.heat_per_front_tyre",
        "Gleitwärme an einem Vorderreifen je Drehung",
    ),
    (
        "output.turn_in_place.heat_per_rear_tyre",
        "Gleitwärme an einem Hinterreifen je Drehung",
    ),
    (
        "output.turn_in_place.holding_moment",
        "Moment der anderen, quer gezogenen Achse",
    ),
    (
        "output.turn_in_place.lateral_scrub_moment",
        "Moment, wenn alle Räder quer radierten",
    ),
    (
        "output.turn_in_place.path_radius",
        "Radius der Bahn des Schwerpunkts",
    ),
    (
        "output.turn_in_place.rear_patch_length",
        "Länge der Aufstandsfläche hinten",
    ),
    (
        "output.turn_in_place.rear_tractive_force_per_wheel",
        "Antriebskraft, ein Hinterrad",
    ),
    (
        "output.turn_in_place.rear_wheel_torque",
        "Moment, ein Hinterrad",
    ),
    ("output.turn_in_place.reason", "Grund"),
    ("output.turn_in_place.resisting_moment", "Widerstandsmoment"),
    (
        "output.turn_in_place.spin.energy_to_180",
        "Motorenergie bis 180°",
    ),
    (
        "output.turn_in_place.spin.energy_to_360",
        "Motorenergie bis 360°",
    ),
    (
        "output.turn_in_place.spin.energy_to_90",
        "Motorenergie bis 90°",
    ),
    ("output.turn_in_place.spin.outcome", "Andrehen"),
    (
        "output.turn_in_place.spin.steady_yaw_rate",
        "stationäre Gierrate",
    ),
    ("output.turn_in_place.spin.time_to_180", "Zeit bis 180°"),
    ("output.turn_in_place.spin.time_to_360", "Zeit bis 360°"),
    ("output.turn_in_place.spin.time_to_90", "Zeit bis 90°"),
    (
        "output.turn_in_place.spin.time_to_steady",
        "Zeit, bis die Gierrate auf 1 % stationär ist",
    ),
    (
        "output.turn_in_place.spin.way_off",
        "Schwerpunkt vom Ausgangsort nach einer vollen Drehung",
    ),
    (
        "output.turn_in_place.tractive_force_per_wheel",
        "Antriebskraft je Rad, im Mittel",
    ),
    (
        "output.turn_in_place.tread_lost_least",
        "Profilverlust je Drehung, unteres Ende der Spanne",
    ),
    (
        "output.turn_in_place.tread_lost_most",
        "Profilverlust je Drehung, oberes Ende der Spanne",
    ),
    (
        "output.turn_in_place.tread_lost_per_turn",
        "Profilverlust je Drehung mit angenommenem Abriebbeiwert",
    ),
    (
        "output.turn_in_place.turning_centre_behind_front_axle",
        "Drehpunkt hinter der Vorderachse",
    ),
    (
        "output.turn_in_place.turning_centre_to_left",
        "Drehpunkt links der Mitte",
    ),
    (
        "output.turn_in_place.wear_coefficient",
        "Abriebbeiwert, eine Annahme",
    ),
    (
        "output.turn_in_place.wheel_speed_ratio",
        "Radgeschwindigkeit durch Gierrate",
    ),
    (
        "output.turn_in_place.wheel_torque",
        "Moment je Rad, im Mittel",
    ),
    (
        "output.turn_in_place.wheel_torque_bound",
        "mittleres Radmoment, obere Schranke mit Bohrmoment",
    ),
    (
        "problem.empty",
        "Das Szenario ist leer: Geben Sie mindestens ein Feld an, zum Beispiel vehicle.base = \"esker\".",
    ),
    ("problem.field", "{0} ist hier kein bekanntes Feld."),
    (
        "problem.field_near",
        "{0} ist hier kein bekanntes Feld; am nächsten kommt {1}.",
    ),
    (
        "problem.kind",
        "{0} = {1} ist von falscher Art; erlaubt: {2}.",
    ),
    ("problem.line", "{0}, Zeile {1}: {2}: {3}; erlaubt: {4}"),
    (
        "problem.missing",
        "{0} fehlt: Geben Sie es an ({1}), oder nennen Sie mit vehicle.base ein Beispielfahrzeug.",
    ),
    ("problem.missing_plain", "{0} fehlt: Geben Sie es an ({1})."),
    ("problem.no_answer", "{0} = {1}: {2}; erlaubt: {3}."),
    (
        "problem.not_a_number",
        "keine Zahl mit einer Einheit dahinter",
    ),
    ("problem.quantity", "{0} = „{1}“: {2}; erlaubt: {3}."),
    (
        "problem.range",
        "{0} = {1} liegt außerhalb des Bereichs; erlaubt: {2}.",
    ),
    (
        "problem.two_readings",
        "{0} kann {1} oder {2} heißen; schreiben Sie, was gemeint ist",
    ),
    (
        "problem.unknown_unit",
        "„{0}“ ist hier keine bekannte Einheit",
    ),
    (
        "problem.word",
        "{0} = „{1}“ ist nicht bekannt; erlaubt: {2}.",
    ),
    ("problem.wrong_dimension", "{0} ist eine Einheit für {1}"),
    ("question.again", "Noch einmal fragen"),
    ("question.another", "Eine andere versuchen"),
    (
        "question.axes",
        "Leere Achsen zum Zeichnen: {0} nach rechts, von {1} bis {2}; {3} nach oben, von 0 bis {4}.",
    ),
    (
        "question.change",
        "Angenommen, nur eines ändert sich: {0}, von {1} auf {2}. Was wird aus diesem Wert? {3}",
    ),
    ("question.changed", "Der Wert geht von {0} auf {1}."),
    ("question.chart", "{0} über {1}"),
    ("question.chart_points", "Punkte der Linie: {0}."),
    (
        "question.choice.change.hint",
        "Die Kosten zählen Teile. Was Ihnen etwas wert ist, ist kein Preis.",
    ),
    (
        "question.choice.change_car.hint",
        "Haftung hängt am Schwerpunkt, ein Volumen an der Leistung. Was von beiden berührt die Änderung?",
    ),
    (
        "question.choice.cost",
        "Was kostet die Anordnung {0}, in der Einheit der Kosten?",
    ),
    (
        "question.choice.cost.hint",
        "Zählen Sie zuerst die Teile: Ein Differenzial sitzt dort, wo ein Motor zwei Räder antreibt.",
    ),
    (
        "question.choice.limit",
        "Wie stark kann die Anordnung {0} auf diesem Boden beschleunigen?",
    ),
    (
        "question.choice.limit.hint",
        "Beschleunigen verlagert Last nach hinten. Schreiben Sie auf, was die angetriebene Achse dann trägt.",
    ),
    (
        "question.choice.motor_cost",
        "Die Anordnung {0} darf {1} kosten. Was darf ein Motor kosten?",
    ),
    (
        "question.choice.motor_cost.hint",
        "Ziehen Sie die Kosten aller anderen Teile ab und teilen Sie durch die Zahl der Motoren.",
    ),
    (
        "question.choice.order",
        "Die Motoren sind stark genug. Welche Anordnung fährt an einer Steigung von {0} mit der größten Reserve an, welche mit der kleinsten, und warum?",
    ),
    (
        "question.choice.order.front_load",
        "F1R1, dann F1, dann R1. An der Grenze tragen die vorderen Reifen von F1 mehr als die hinteren von R1.",
    ),
    (
        "question.choice.order.hint",
        "Nehmen Sie die Last jeder angetriebenen Achse auf der Steigung, an der Grenze. Starke Motoren lassen Reifen nicht mehr halten.",
    ),
    (
        "question.choice.order.pushing",
        "R1, dann F1R1, dann F1. Bergauf liegt alle Last auf den Hinterrädern.",
    ),
    (
        "question.choice.order.rear_load",
        "F1R1, dann R1, dann F1. An der Grenze tragen die hinteren Reifen von R1 mehr als die vorderen von F1.",
    ),
    (
        "question.choice.order.torque",
        "F1R1, dann R1, dann F1. Zwei Motoren geben das doppelte Moment, und das Moment entscheidet.",
    ),
    (
        "question.choice.parts",
        "Wie viele Teile hat die Anordnung {0}: Motoren, Umrichter, Getriebe, Seitenwellen, Differenziale und Trennkupplungen?",
    ),
    (
        "question.choice.parts.hint",
        "Drei für jeden Motor, zwei Seitenwellen für jede angetriebene Achse. Der Rest hängt von der Achse ab.",
    ),
    (
        "question.choice.power_for_volume",
        "Die Antriebseinheiten der Anordnung {0} dürfen zusammen {1} einnehmen. Wie viel Leistung darf ein Motor haben?",
    ),
    (
        "question.choice.power_for_volume.hint",
        "Jeder Liter dient der ganzen Leistung: Addieren Sie, was ein Kilowatt in Motor, Umrichter und Getriebe an Litern braucht.",
    ),
    (
        "question.choice.read_grade",
        "Das Diagramm gehört zu einem Fahrzeug mit einem Motor hinten (R1). Bei welcher Steigung bleibt eine Beschleunigung von {0} übrig?",
    ),
    (
        "question.choice.read_grade.hint",
        "Gehen Sie von der Beschleunigung waagerecht zur Linie, dann hinunter zur Steigung. Schätzen Sie zwischen den Gitterlinien.",
    ),
    (
        "question.choice.refused",
        "Was wird aus der Anordnung {0} bei diesen Vorgaben?",
    ),
    (
        "question.choice.refused.hint",
        "Fragen Sie zuerst, ob ihre Einheiten passen. Dann sehen Sie, was verlangt ist: Welche Achse könnte es?",
    ),
    (
        "question.choice.start",
        "Welche Anordnung fährt an einer Steigung von {0} mit mehr Reserve an?",
    ),
    (
        "question.choice.start.hint",
        "Die Steigung verlagert Last nach hinten, das Beschleunigen auch. Aber wo liegt die Last in der Ebene?",
    ),
    (
        "question.choice.volume",
        "Anordnung {0}: Wie groß sind alle ihre Antriebseinheiten zusammen?",
    ),
    (
        "question.choice.volume.hint",
        "Bestimmen Sie das Volumen einer Einheit: Motor, Umrichter und Getriebe tragen jeweils die ganze Leistung.",
    ),
    ("question.close", "weniger als 1\u{2009}% daneben"),
    ("question.commit", "Vorhersage festlegen"),
    (
        "question.cornering.ackermann",
        "Wie weit sind die Vorderräder auf diesem Radius bei Schrittgeschwindigkeit eingeschlagen?",
    ),
    (
        "question.cornering.ackermann.hint",
        "Noch läuft kein Reifen schräg: Die Räder folgen dem Kreis. Radstand durch Radius, in Grad.",
    ),
    (
        "question.cornering.brake_heat",
        "Eine Hinterradbremse erzeugt dieses Giermoment. Wie viel Wärme geht hinein?",
    ),
    (
        "question.cornering.brake_heat.hint",
        "Eine Kraft an der halben Spurweite erzeugt das Moment. Kraft mal Geschwindigkeit ist Leistung.",
    ),
    (
        "question.cornering.change.hint",
        "Schreiben Sie den Wert als Formel. Steht das, was sich ändert, darin?",
    ),
    (
        "question.cornering.characteristic_speed",
        "Bei welcher Geschwindigkeit braucht dieses Auto den doppelten Ackermannwinkel?",
    ),
    (
        "question.cornering.characteristic_speed.hint",
        "Dort ist K·a_y so groß wie L/R. Setzen Sie a_y = V²/R ein.",
    ),
    (
        "question.cornering.motor_force",
        "Zwei Motoren hinten erzeugen dieses Giermoment gegeneinander. Mit welcher Kraft schiebt jedes ihrer Räder?",
    ),
    (
        "question.cornering.motor_force.hint",
        "Jede der beiden Kräfte hat die halbe Spurweite als Hebel, und beide drehen das Auto gleich herum.",
    ),
    (
        "question.cornering.needed_speed",
        "Bei welcher Geschwindigkeit ist die Querbeschleunigung auf diesem Radius {0}?",
    ),
    (
        "question.cornering.needed_speed.hint",
        "V²/R ist die Querbeschleunigung. Setzen Sie g mit 9,81 m/s² ein.",
    ),
    (
        "question.cornering.read_speed",
        "Das Diagramm gehört zu einer Kurve. Bei welcher Geschwindigkeit verlangt sie eine Querbeschleunigung von {0}?",
    ),
    (
        "question.cornering.read_speed.hint",
        "Gehen Sie von der Beschleunigung waagerecht zur Linie, dann hinunter zur Geschwindigkeit. Die doppelte Geschwindigkeit verlangt die vierfache Beschleunigung.",
    ),
    (
        "question.cornering.speed_lost",
        "Eine Hinterradbremse erzeugt dieses Giermoment und nichts hält die Geschwindigkeit. Wie stark wird das Auto langsamer?",
    ),
    (
        "question.cornering.speed_lost.hint",
        "Die Bremskraft folgt aus dem Moment; sie muss das ganze Auto verzögern.",
    ),
    (
        "question.cornering.steer",
        "Welchen Lenkwinkel braucht das Einspurmodell für diese Kurve?",
    ),
    (
        "question.cornering.steer.hint",
        "Der Ackermannwinkel und dazu der Eigenlenkgradient mal der Querbeschleunigung.",
    ),
    (
        "question.cornering.turn",
        "Kann das Auto diese Kurve halten, und wenn nicht, was beendet sie?",
    ),
    (
        "question.cornering.turn.hint",
        "Vergleichen Sie V²/R mit der Reibung. Dann: Welche Achse hat weniger übrig, und wird ein Rad leicht?",
    ),
    (
        "question.cornering.understeer_gradient",
        "Wie groß ist der Eigenlenkgradient dieses Autos?",
    ),
    (
        "question.cornering.understeer_gradient.hint",
        "Für jede Achse: ruhende Last durch Schräglaufsteifigkeit ihrer beiden Reifen. Vorn weniger hinten, je g.",
    ),
    (
        "question.cornering.wrong_line.hint",
        "Prüfen Sie jede Zeile für sich. Was muss mit ihr geschehen, wenn Geschwindigkeit oder Radius sich verdoppeln?",
    ),
    ("question.far", "viel zu viel oder viel zu wenig"),
    ("question.field", "Ihre Vorhersage: {0}"),
    ("question.front_axle", "die Vorderachse"),
    ("question.given", "Gegeben"),
    ("question.height", "{0} bei {1}"),
    ("question.hint", "Hinweis"),
    (
        "question.idle_drag.change.hint",
        "Fragen Sie, welchen Verlust die Änderung berührt: Kupfer, Eisen, Lager oder die Straße.",
    ),
    (
        "question.idle_drag.idle_induction",
        "Eine Asynchronmaschine ohne Strom läuft mit. Wie viel verliert sie bei der gegebenen Geschwindigkeit?",
    ),
    (
        "question.idle_drag.idle_induction.hint",
        "Ohne Feld bleiben nur Lager und Luft; das eine geht mit der Drehzahl, das andere mit ihrer dritten Potenz.",
    ),
    (
        "question.idle_drag.idle_magnet",
        "Ein Motor mit Permanentmagneten macht kein Drehmoment und läuft mit. Wie viel verliert er bei der gegebenen Geschwindigkeit?",
    ),
    (
        "question.idle_drag.idle_magnet.hint",
        "Jeder Anteil gilt bei der Eckdrehzahl. Darüber ist das Feld schwächer, und es niederzuhalten kostet Kupfer.",
    ),
    (
        "question.idle_drag.loses_more",
        "Ein Motor allein treibt das Auto bei konstanter Geschwindigkeit. Welche Bauart verliert mehr?",
    ),
    (
        "question.idle_drag.loses_more.hint",
        "Die eine muss ihr Feld erst machen, der andere muss seines bei hoher Drehzahl niederhalten.",
    ),
    (
        "question.idle_drag.motor_speed",
        "Wie schnell dreht ein Motor dieses Autos bei der gegebenen Geschwindigkeit?",
    ),
    (
        "question.idle_drag.motor_speed.hint",
        "Das Rad dreht mit Geschwindigkeit durch Radius; der Motor dreht um die Übersetzung schneller.",
    ),
    (
        "question.idle_drag.range",
        "Ein Motor hinten treibt das Auto bei konstanter Geschwindigkeit. Wie weit reicht die Batterie?",
    ),
    (
        "question.idle_drag.range.hint",
        "Erst die Energie je Strecke: Fahrwiderstand, Verluste, Nebenverbraucher.",
    ),
    (
        "question.idle_drag.read_speed",
        "Das Diagramm gehört zu einem Fahrzeug. Bei welcher Geschwindigkeit verliert sein leer mitlaufender Permanentmagnetmotor {0}?",
    ),
    (
        "question.idle_drag.read_speed.hint",
        "Gehen Sie von der Leistung waagerecht zur Linie, dann hinunter zur Geschwindigkeit. Schätzen Sie zwischen den Gitterlinien.",
    ),
    (
        "question.idle_drag.road_load",
        "Wie groß ist der Fahrwiderstand dieses Autos bei der gegebenen Geschwindigkeit?",
    ),
    (
        "question.idle_drag.road_load.hint",
        "Der Luftwiderstand geht mit dem Quadrat der Geschwindigkeit; der Rollwiderstand ist ein Anteil des Gewichts.",
    ),
    (
        "question.idle_drag.sketch_idle_loss",
        "Skizzieren Sie, wie der Verlust eines mitlaufenden Permanentmagnetmotors mit der Fahrgeschwindigkeit verläuft, von {0} bis {1}.",
    ),
    (
        "question.idle_drag.sketch_idle_loss.hint",
        "Ein Teil des Verlusts im Eisen wächst mit der Drehzahl, ein anderer mit ihrem Quadrat; die Lager kommen hinzu.",
    ),
    (
        "question.idle_drag.speed_of_loss",
        "Bei welcher Geschwindigkeit verliert ein mitlaufender Motor mit Permanentmagneten {0}?",
    ),
    (
        "question.idle_drag.speed_of_loss.hint",
        "Der Verlust steigt mit der Geschwindigkeit etwas schneller als verhältnisgleich.",
    ),
    (
        "question.idle_drag.steady_energy",
        "Ein Motor hinten treibt das Auto bei konstanter Geschwindigkeit. Wie viel Energie braucht es für einen Kilometer?",
    ),
    (
        "question.idle_drag.steady_energy.hint",
        "Eine Kraft ist eine Energie je Strecke. Dazu kommen Verluste und Nebenverbraucher, geteilt durch die Geschwindigkeit.",
    ),
    (
        "question.idle_drag.who_drives",
        "Anordnung {0} bei konstanter Geschwindigkeit, Motoren wie angegeben. Welche Achse treibt beim kleinsten Verlust?",
    ),
    (
        "question.idle_drag.who_drives.hint",
        "Fragen Sie bei jeder Achse, was sie ohne Drehmoment verliert und was das Wecken hinzufügt.",
    ),
    (
        "question.idle_drag.wrong_line.hint",
        "Prüfen Sie jede Zeile für sich: ihre Einheit, und ob sie wächst, wenn sie soll.",
    ),
    (
        "question.inside",
        "Das liegt innerhalb der Toleranz von {0}.",
    ),
    (
        "question.later",
        "Bild, Zahlen und Rechenweg erscheinen nach Ihrer Vorhersage.",
    ),
    (
        "question.launch.after_rollout",
        "Ein Motor hinten (R1), mit Antriebsschlupfregelung: Welche Zeit bis 60 mph wird angegeben, wenn die Uhr nach dem ersten Fuß anläuft?",
    ),
    (
        "question.launch.after_rollout.hint",
        "Suchen Sie die Zeit aus dem Stand und die Zeit für den ersten Fuß und ziehen Sie ab.",
    ),
    (
        "question.launch.change.hint",
        "Zu welcher Hälfte des Laufs gehört der geänderte Wert: zu der, die die Haftung begrenzt, oder zu der, die die Leistung begrenzt?",
    ),
    (
        "question.launch.motor_energy",
        "Ein Motor an jeder Achse (F1R1), mit Antriebsschlupfregelung: Wie viel Energie geben die Motoren bis 60 mph ab?",
    ),
    (
        "question.launch.motor_energy.hint",
        "Beginnen Sie mit der Bewegungsenergie des Fahrzeugs. Räder und Läufer, Schlupf, Getriebe, Luft und Straße brauchen etwas mehr.",
    ),
    (
        "question.launch.needed_power",
        "Ein Motor an jeder Achse (F1R1), mit Antriebsschlupfregelung: Welche Leistung muss jeder Motor haben, damit das Fahrzeug in {0} auf 60 mph kommt?",
    ),
    (
        "question.launch.needed_power.hint",
        "Sobald die Motoren begrenzen, wächst die Energie mit der Zeit: Die Bewegungsenergie bei 60 mph durch die Leistung beider Motoren ist etwa die Dauer dieses Teils.",
    ),
    (
        "question.launch.order",
        "F1R1, F2 und R2 haben je zwei gleiche Motoren. Wer ist zuerst auf 60 mph, wer zuletzt, und warum?",
    ),
    (
        "question.launch.order.front_heavy",
        "F1R1, dann F2, dann R2. Die Vorderachse trägt so viel, dass sie auch beim Beschleunigen mehr hält als die Hinterachse.",
    ),
    (
        "question.launch.order.grip_alone",
        "F1R1, dann R2, dann F2. R2 ist bis 60 mph durch die Reifen begrenzt: Die Leistung hat keinen Anteil an der Zeit.",
    ),
    (
        "question.launch.order.hint",
        "Suchen Sie die Kraft, die die angetriebenen Reifen halten, und die Geschwindigkeit, bei der die Leistung der Motoren nicht mehr als diese Kraft gibt. Liegt sie über 60 mph?",
    ),
    (
        "question.launch.order.pushing",
        "R2, dann F1R1, dann F2. Räder, die schieben, halten mehr als Räder, die ziehen.",
    ),
    (
        "question.launch.order.then_power",
        "F1R1, dann R2, dann F2. R2 ist erst durch die Reifen begrenzt, dann durch die Motoren.",
    ),
    (
        "question.launch.quarter_after_rollout",
        "Ein Motor hinten (R1), mit Antriebsschlupfregelung: Welche Zeit für die Viertelmeile wird angegeben, wenn die Uhr nach dem ersten Fuß anläuft?",
    ),
    (
        "question.launch.quarter_after_rollout.hint",
        "Der erste Fuß dauert einige Zehntel, kaum mehr. Suchen Sie zuerst die lange Zeit.",
    ),
    (
        "question.launch.quarter_speed",
        "Ein Motor an jeder Achse (F1R1), mit Antriebsschlupfregelung: Wie schnell ist das Fahrzeug nach einer Viertelmeile?",
    ),
    (
        "question.launch.quarter_speed.hint",
        "Bei konstanter Leistung wächst die dritte Potenz der Geschwindigkeit mit dem Weg.",
    ),
    (
        "question.launch.quarter_time",
        "Ein Motor an jeder Achse (F1R1), mit Antriebsschlupfregelung: Wie lange dauert eine Viertelmeile?",
    ),
    (
        "question.launch.quarter_time.hint",
        "Den größten Teil des Weges begrenzt die Leistung. Dort ist Energie Leistung mal Zeit.",
    ),
    (
        "question.launch.read_time",
        "Das Diagramm gehört zu einem Start aus dem Stand. Wann erreicht das Fahrzeug {0}?",
    ),
    (
        "question.launch.read_time.hint",
        "Gehen Sie von der Geschwindigkeit waagerecht zur Linie, dann hinunter zur Zeit. Schätzen Sie zwischen den Gitterlinien.",
    ),
    (
        "question.launch.rollout",
        "Ein Motor an jeder Achse (F1R1), mit Antriebsschlupfregelung: Wie lange dauert der erste Fuß?",
    ),
    (
        "question.launch.rollout.hint",
        "Ein Fuß ist 0,3048 m. Die Beschleunigung ist nicht sofort da: Reifen brauchen etwas Weg, Federn etwas Zeit.",
    ),
    (
        "question.launch.time_to_100",
        "Ein Motor hinten (R1), mit Antriebsschlupfregelung: Wie lange braucht das Fahrzeug aus dem Stand auf 100 km/h?",
    ),
    (
        "question.launch.time_to_100.hint",
        "Solange die Haftung begrenzt, ist die Beschleunigung die Traktionsgrenze des Hinterradantriebs.",
    ),
    (
        "question.launch.time_to_160",
        "Ein Motor an jeder Achse (F1R1), mit Antriebsschlupfregelung: Wie lange braucht das Fahrzeug aus dem Stand auf 160 km/h?",
    ),
    (
        "question.launch.time_to_160.hint",
        "Die Haftung begrenzt nur am Anfang. Danach ist die Energie, die die Motoren in einer Sekunde abgeben, ihre Leistung.",
    ),
    (
        "question.launch.time_to_60",
        "Ein Motor an jeder Achse (F1R1), mit Antriebsschlupfregelung: Wie lange braucht das Fahrzeug aus dem Stand auf 60 mph?",
    ),
    (
        "question.launch.time_to_60.hint",
        "Teilen Sie den Lauf: Erst bestimmt die Reibung die Kraft, dann die Leistung. Suchen Sie die Geschwindigkeit, bei der sie sich treffen.",
    ),
    ("question.less", "er wird kleiner"),
    ("question.line_right", "richtig"),
    ("question.line_yours", "Ihre Linie"),
    (
        "question.lines",
        "Die richtige Linie: {0}. Ihre Linie: {1}.",
    ),
    (
        "question.load_transfer.change.hint",
        "Suchen Sie den geänderten Wert unter den Formelzeichen der Lastgleichung.",
    ),
    (
        "question.load_transfer.front_load",
        "Das Fahrzeug beschleunigt mit {0}; ein negativer Wert ist Bremsen. Wie groß ist die Vorderachslast?",
    ),
    (
        "question.load_transfer.front_load.hint",
        "Beim Bremsen zeigt die Trägheitskraft nach vorn. Stellen Sie die Momente um die hinteren Aufstandsflächen auf.",
    ),
    (
        "question.load_transfer.front_share",
        "Das Fahrzeug beschleunigt mit {0}. Welcher Anteil der Last liegt auf der Vorderachse?",
    ),
    (
        "question.load_transfer.front_share.hint",
        "Beginnen Sie mit dem Anteil im Stand. Die verlagerte Last, geteilt durch das Gewicht, ist die Änderung.",
    ),
    (
        "question.load_transfer.heavier_axle",
        "Das Auto beschleunigt mit {0}; ein negativer Wert ist Bremsen. Welche Achse trägt mehr?",
    ),
    (
        "question.load_transfer.heavier_axle.hint",
        "Zwei Dinge entscheiden: die Lasten im Stand und die Last, die die Beschleunigung verlagert. Bestimmen Sie jedes für sich.",
    ),
    (
        "question.load_transfer.lift_height",
        "Wie hoch muss der Schwerpunkt liegen, damit die Vorderachse bei {0} abhebt?",
    ),
    (
        "question.load_transfer.lift_height.hint",
        "Wenn die Vorderachse nichts trägt, müssen Gewichtskraft und Trägheitskraft zusammen auf die hintere Aufstandsfläche zeigen.",
    ),
    (
        "question.load_transfer.ratio_acceleration",
        "Bei welcher Beschleunigung trägt die Hinterachse das {0}-Fache der Vorderachse?",
    ),
    (
        "question.load_transfer.ratio_acceleration.hint",
        "Über der Beschleunigung sind beide Lasten Geraden, und ihre Summe bleibt die Gewichtskraft.",
    ),
    (
        "question.load_transfer.read_load",
        "Das Diagramm gehört zu einem Fahrzeug. Wie viel trägt seine Hinterachse bei {0}?",
    ),
    (
        "question.load_transfer.read_load.hint",
        "Gehen Sie von der Beschleunigung hinauf zur Linie, dann hinüber zur Last. Schätzen Sie zwischen den Gitterlinien.",
    ),
    (
        "question.load_transfer.rear_load",
        "Das Auto beschleunigt mit {0}. Wie groß ist seine Hinterachslast?",
    ),
    (
        "question.load_transfer.rear_load.hint",
        "Die Trägheitskraft greift in Schwerpunkthöhe an. Ihrem Moment müssen Achslasten das Gleichgewicht halten, die einen Radstand auseinanderliegen.",
    ),
    (
        "question.load_transfer.sketch_rear_load",
        "Skizzieren Sie, wie die Hinterachslast mit der Beschleunigung verläuft, von {0} bis {1}.",
    ),
    (
        "question.load_transfer.sketch_rear_load.hint",
        "Im Stand teilt die Lage des Schwerpunkts das Gewicht. Jeder weitere Schritt der Beschleunigung verlagert so viel Last wie der vorige.",
    ),
    (
        "question.load_transfer.transfer_acceleration",
        "Bei welcher Beschleunigung sind {0} Last von der Vorderachse auf die Hinterachse gegangen?",
    ),
    (
        "question.load_transfer.transfer_acceleration.hint",
        "Die verlagerte Last ist der Beschleunigung proportional.",
    ),
    (
        "question.load_transfer.transferred",
        "Das Fahrzeug beschleunigt mit {0}. Wie viel Last ist von der Vorderachse auf die Hinterachse gegangen?",
    ),
    (
        "question.load_transfer.transferred.hint",
        "Dem Kräftepaar aus Trägheitskraft und Antriebskraft hält ein Kräftepaar der Achslasten das Gleichgewicht.",
    ),
    (
        "question.load_transfer.two_to_one",
        "Bei welcher Beschleunigung trägt die Hinterachse doppelt so viel wie die Vorderachse?",
    ),
    (
        "question.load_transfer.two_to_one.hint",
        "Dann trägt die Vorderachse ein Drittel des Gewichts. Suchen Sie, was von ihr weichen muss.",
    ),
    (
        "question.load_transfer.wrong_line.hint",
        "Beide Achsen zusammen tragen das Gewicht, auch beim Beschleunigen. Prüfen Sie auch die Einheiten.",
    ),
    ("question.more", "er wird größer"),
    (
        "question.motor_split.change.hint",
        "Die Übereinstimmung ist eine Sache der Geometrie. Fragen Sie, ob der geänderte Wert dazugehört.",
    ),
    (
        "question.motor_split.like_limit",
        "Antriebslayout {0}, und jeder Motor gibt dasselbe Moment: Welche Beschleunigung ist höchstens möglich, bevor ein Reifen durchrutscht?",
    ),
    (
        "question.motor_split.like_limit.hint",
        "Die Zahl der Motoren legt die Aufteilung der Kraft fest. Suchen Sie für jede Achse, wo ihre Reibung aufgebraucht ist; der kleinere Wert zählt.",
    ),
    (
        "question.motor_split.match_height",
        "Wie hoch muss der Schwerpunkt liegen, damit bei F1R2 Moment und Last bei {0} übereinstimmen?",
    ),
    (
        "question.motor_split.match_height.hint",
        "Ein höherer Schwerpunkt verlagert bei gleicher Beschleunigung mehr Last. Wie viel zu verlagern ist, liegt fest.",
    ),
    (
        "question.motor_split.match_place",
        "Wie weit hinter der Vorderachse muss der Schwerpunkt liegen, damit bei F1R2 Moment und Last bei {0} übereinstimmen?",
    ),
    (
        "question.motor_split.match_place.hint",
        "Rechnen Sie rückwärts: Bei dieser Beschleunigung liegt ein Drittel der Last vorn. Zählen Sie dazu, was sich verlagert hat.",
    ),
    (
        "question.motor_split.matching",
        "Ein Motor vorn und zwei gleiche hinten (F1R2): Bei welcher Beschleunigung stimmen die Anteile von Moment und Last überein?",
    ),
    (
        "question.motor_split.matching.hint",
        "Drei gleiche Motoren geben ein Drittel des Moments vorn ab. Bei welcher Beschleunigung liegt ein Drittel der Last vorn?",
    ),
    (
        "question.motor_split.order",
        "Jeder Motor gibt dasselbe Moment. Welche Anordnung hat die höchste Grenze, bevor ein Reifen durchrutscht, welche die niedrigste, und warum?",
    ),
    (
        "question.motor_split.order.count",
        "F1R2, dann F2R1, dann F1R1. Drei Motoren halten immer mehr als zwei.",
    ),
    (
        "question.motor_split.order.front_heavy",
        "F1R1, dann F2R1, dann F1R2. An der Grenze passt die Hälfte des Moments vorn am besten zur Last, und zwei Drittel besser als ein Drittel.",
    ),
    (
        "question.motor_split.order.half",
        "F1R1, dann F1R2, dann F2R1. An der Grenze passt die Hälfte des Moments vorn am besten zur Last, und ein Drittel besser als zwei Drittel.",
    ),
    (
        "question.motor_split.order.hint",
        "Die vorderen Anteile des Moments sind 1/2, 1/3 und 2/3. Vergleichen Sie sie mit dem vorderen Anteil der Last an der Grenze.",
    ),
    (
        "question.motor_split.order.rest",
        "F1R1, dann F1R2, dann F2R1. Was passt, entscheidet die Last im Stand, gleich wie stark beschleunigt wird.",
    ),
    (
        "question.motor_split.order.third",
        "F1R2, dann F1R1, dann F2R1. An der Grenze passt ein Drittel des Moments vorn besser zur Last als die Hälfte.",
    ),
    (
        "question.motor_split.power_needed",
        "Gleiche Motoren, einer an jeder Achse (F1R1): Wie viel Leistung muss jeder geben können, um bis {0} an der Traktionsgrenze zu bleiben?",
    ),
    (
        "question.motor_split.power_needed.hint",
        "Leistung ist Kraft mal Geschwindigkeit. Welche Achse verlangt mehr Kraft?",
    ),
    (
        "question.motor_split.read_friction",
        "Das Diagramm gehört zu einem Fahrzeug mit gleichen Motoren, einem vorn und zwei hinten (F1R2). Wie viel Reibung braucht es, um mit {0} zu beschleunigen?",
    ),
    (
        "question.motor_split.read_friction.hint",
        "Gehen Sie von der Beschleunigung waagerecht zur Linie, dann hinunter zur Reibung. Wo die Linie knickt, beginnt die andere Achse zu begrenzen.",
    ),
    (
        "question.motor_split.share_at_limit",
        "Ein Motor an jeder Achse (F1R1), jeder gibt, was seine Achse nutzen kann: Welcher Anteil der Last liegt an der Traktionsgrenze vorn?",
    ),
    (
        "question.motor_split.share_at_limit.hint",
        "Sind alle Räder an ihrer Grenze, hängt die Beschleunigung kaum vom Layout ab. Suchen Sie erst sie, dann die Last, die sie verlagert.",
    ),
    (
        "question.motor_split.share_at_rest",
        "Welcher Anteil der Last liegt im Stand vorn?",
    ),
    (
        "question.motor_split.share_at_rest.hint",
        "Stellen Sie die Momente um die Hinterachse auf.",
    ),
    (
        "question.motor_split.torque_needed",
        "Gleiche Motoren, einer an jeder Achse (F1R1): Wie viel Moment muss jeder geben können, um die Traktionsgrenze zu erreichen?",
    ),
    (
        "question.motor_split.torque_needed.hint",
        "Die stärker belastete Achse bestimmt es. Gehen Sie von der Kraft am Boden über Radradius, Getriebe und Verluste zum Motor.",
    ),
    (
        "question.motor_split.two_or_three",
        "Jeder Motor gibt dasselbe Moment. Was hat hier die höhere Grenze: zwei Motoren (F1R1) oder drei (F1R2)?",
    ),
    (
        "question.motor_split.two_or_three.hint",
        "Auf glattem Boden verlagert sich wenig Last, also zählt die Verteilung im Stand. Wo die Reifen greifen, zählt die unter Beschleunigung.",
    ),
    (
        "question.motor_split.wrong_line.hint",
        "Fragen Sie bei jeder Zeile, was aus ihr würde, wenn der Schwerpunkt höher oder weiter hinten läge.",
    ),
    (
        "question.nine_heights",
        "eine Linie über die ganze Achse, durch ihre neun Griffe",
    ),
    (
        "question.nothing_drawn",
        "Es ist noch keine Linie gezeichnet. Zeichnen Sie {0}.",
    ),
    ("question.order", "Reihenfolge und Grund"),
    (
        "question.outside",
        "Das liegt außerhalb der Toleranz von {0}.",
    ),
    (
        "question.packaging.change.hint",
        "Fragen Sie, woraus sich der Wert zusammensetzt und welchen Teil die Änderung berührt.",
    ),
    (
        "question.packaging.drive_volume",
        "Anordnung {0}: Wie groß sind alle ihre Antriebseinheiten zusammen?",
    ),
    (
        "question.packaging.drive_volume.hint",
        "Gleiche Motoren: Bestimmen Sie eine Einheit und zählen Sie dann.",
    ),
    (
        "question.packaging.fits",
        "Anordnung {0}: Passen ihre Antriebseinheiten, und wo nicht?",
    ),
    (
        "question.packaging.fits.hint",
        "Bestimmen Sie die Breite einer Einheit und den Platz an jeder Achse. Zwei Einheiten brauchen einen Abstand.",
    ),
    (
        "question.packaging.front_reach",
        "Wie weit ragt ein Vorderrad am Anschlag von seiner eigenen Mitte nach innen?",
    ),
    (
        "question.packaging.front_reach.hint",
        "Von oben ist das Rad ein Rechteck. Drehen Sie es und sehen Sie, wohin seine innere Ecke geht.",
    ),
    (
        "question.packaging.front_room",
        "Wie viel Platz ist zwischen den Vorderrädern für Antriebseinheiten?",
    ),
    (
        "question.packaging.front_room.hint",
        "Auf jeder Seite gehen die Ausladung des Rads, der Freigang sowie Träger und Radaufhängung ab.",
    ),
    (
        "question.packaging.needed_density",
        "Welche Leistungsdichte muss der Motor allein haben, damit die Antriebseinheit {0} groß wird?",
    ),
    (
        "question.packaging.needed_density.hint",
        "Ziehen Sie zuerst die Volumen von Umrichter und Getriebe ab. Der Rest gehört dem Motor.",
    ),
    (
        "question.packaging.power_density",
        "Wie groß ist die Leistungsdichte des ganzen Satzes?",
    ),
    (
        "question.packaging.power_density.hint",
        "Sie ist kleiner als die kleinste der drei. Nehmen Sie irgendeine Leistung und addieren Sie die Volumen.",
    ),
    (
        "question.packaging.read_angle",
        "Das Diagramm gehört zu einem Fahrzeug. Wie weit dürfen seine Vorderräder einschlagen, damit zwischen ihnen {0} Platz bleiben?",
    ),
    (
        "question.packaging.read_angle.hint",
        "Gehen Sie vom Platz waagerecht zur Linie, dann hinunter zum Winkel. Schätzen Sie zwischen den Gitterlinien.",
    ),
    (
        "question.packaging.steer_limit",
        "Wie weit dürfen die Vorderräder einschlagen, damit zwischen ihnen {0} Platz bleiben?",
    ),
    (
        "question.packaging.steer_limit.hint",
        "Aus dem Platz folgt, wie weit ein Rad ausladen darf; der Winkel folgt aus der Ausladung.",
    ),
    (
        "question.packaging.unit_volume",
        "Wie groß ist eine Antriebseinheit: Motor, Umrichter, Getriebe und Differenzial zusammen?",
    ),
    (
        "question.packaging.unit_volume.hint",
        "Jeder Teil führt die ganze Leistung, also braucht jeder sein eigenes Volumen. Was darf man addieren, Leistungsdichten oder Volumen?",
    ),
    (
        "question.packaging.unit_width",
        "Wie breit ist der äußere Kasten einer Antriebseinheit?",
    ),
    (
        "question.packaging.unit_width.hint",
        "Erst das Volumen der Teile, dann das des Kastens, in dem sie liegen, dann seine Länge und Höhe.",
    ),
    (
        "question.packaging.wider_axle",
        "Welche Achse hat mehr Platz für Antriebseinheiten?",
    ),
    (
        "question.packaging.wider_axle.hint",
        "Zwei Dinge entscheiden: die Spurweite und wie weit die Räder nach innen ragen.",
    ),
    (
        "question.packaging.wrong_line.hint",
        "Fragen Sie bei jeder Zeile, was Raum braucht und wie oft es da ist.",
    ),
    ("question.rear_axle", "die Hinterachse"),
    ("question.same", "er bleibt gleich"),
    (
        "question.sketch_how",
        "Zeichnen Sie die Linie mit Stift, Maus oder Finger, oder bewegen Sie ihre neun Griffe mit den Pfeiltasten.",
    ),
    (
        "question.spot",
        "Hier ist ein Lösungsweg für: {0}. Eine Zeile hat einen Fehler, und die Zeilen danach sind damit weitergerechnet. Welche ist es?",
    ),
    ("question.spotted", "Zeile {0} müsste lauten: {1}. {2}"),
    (
        "question.tolerance",
        "Richtig ist ein Wert, der höchstens {0} von der Antwort abweicht.",
    ),
    (
        "question.tolerance_find",
        "Richtig ist ein Wert, dessen Ergebnis höchstens {0} vom Gefragten abweicht.",
    ),
    (
        "question.tolerance_line",
        "Richtig ist eine Linie, die im Mittel um höchstens {0} des größten richtigen Werts abweicht.",
    ),
    ("question.too_little", "{0} zu wenig"),
    ("question.too_much", "{0} zu viel"),
    (
        "question.traction.change.hint",
        "Fragen Sie, welche Achsen antreiben und ob die Änderung ihnen mehr, weniger oder gleich viel Last gibt.",
    ),
    (
        "question.traction.faster_drive",
        "Ein Motor vorn (F1) oder einer hinten (R1): Welcher kann hier stärker beschleunigen?",
    ),
    (
        "question.traction.faster_drive.hint",
        "Zwei Dinge entscheiden: was jede Achse im Stand trägt und was die Beschleunigung aus dieser Last macht.",
    ),
    (
        "question.traction.force",
        "Antriebslayout {0}: Wie groß ist die Antriebskraft an der Traktionsgrenze?",
    ),
    (
        "question.traction.force.hint",
        "Reibwert mal Last der angetriebenen Achsen, an der Grenze und nicht im Stand.",
    ),
    (
        "question.traction.ideal_share",
        "Welcher Anteil des Moments an der Vorderachse würde im Stand alle Reifen gleich ausnutzen?",
    ),
    (
        "question.traction.ideal_share.hint",
        "Reifen werden gleich ausgenutzt, wenn die Kraft so verteilt ist wie die Last.",
    ),
    (
        "question.traction.limit",
        "Anordnung {0}: Wie groß ist die größte Beschleunigung, die ihre Reifen zulassen?",
    ),
    (
        "question.traction.limit.hint",
        "Die Last der treibenden Achse hängt von eben der Beschleunigung ab, nach der gefragt ist. Schreiben Sie die Kraft als Haftbeiwert mal diese Last, und lösen Sie auf.",
    ),
    (
        "question.traction.needed_friction",
        "Anordnung {0}: Welchen Haftbeiwert muss der Boden für eine Beschleunigung von {1} bieten?",
    ),
    (
        "question.traction.needed_friction.hint",
        "Bestimmen Sie die Last der treibenden Achse bei dieser Beschleunigung. Die Kraft durch diese Last ist der Haftbeiwert, den sie braucht.",
    ),
    (
        "question.traction.one_side",
        "Der Reibwert ist links {0} und rechts {1}. Ein Motor mit offenem Differenzial treibt die Hinterachse an (R1): Welche Beschleunigung ist höchstens möglich?",
    ),
    (
        "question.traction.one_side.hint",
        "Ein offenes Differenzial gibt beiden Rädern dasselbe Moment. Welches Rad bestimmt es?",
    ),
    (
        "question.traction.order",
        "Welche Anordnung hat hier die höchste Traktionsgrenze, welche die niedrigste, und warum? Jeder Motor gibt das genannte Moment.",
    ),
    (
        "question.traction.order.front_heavy",
        "F1R1, dann F1, dann R1. F1 und R1 sind durch die Reifen begrenzt, und die vorderen tragen auch an der Grenze mehr.",
    ),
    (
        "question.traction.order.hint",
        "Bestimmen Sie für jede angetriebene Achse zwei Kräfte: was ihre Reifen an der Grenze halten und was ihr Motor gibt. Die kleinere zählt.",
    ),
    (
        "question.traction.order.motor",
        "F1R1, dann R1, dann F1. R1 ist durch den Motor begrenzt, F1 durch die Reifen.",
    ),
    (
        "question.traction.order.pushing",
        "R1, dann F1R1, dann F1. Räder, die schieben, halten mehr als Räder, die ziehen.",
    ),
    (
        "question.traction.order.tyres",
        "F1R1, dann R1, dann F1. R1 und F1 sind durch die Reifen begrenzt, und die hinteren tragen an der Grenze mehr.",
    ),
    (
        "question.traction.read_friction",
        "Das Diagramm gehört zu einem Fahrzeug mit einem Motor hinten (R1). Wie viel Reibung braucht es, um mit {0} zu beschleunigen?",
    ),
    (
        "question.traction.read_friction.hint",
        "Gehen Sie von der Beschleunigung waagerecht zur Linie, dann hinunter zur Reibung. Schätzen Sie zwischen den Gitterlinien.",
    ),
    (
        "question.traction.rear_load",
        "Ein Motor treibt die Hinterachse an (R1). Wie groß ist die Hinterachslast an der Traktionsgrenze?",
    ),
    (
        "question.traction.rear_load.hint",
        "Suchen Sie zuerst die Grenze: Sie bestimmt die Last, und die Last bestimmt die Grenze.",
    ),
    (
        "question.traction.sketch_limit",
        "Anordnung {0}: Skizzieren Sie, wie die größte Beschleunigung mit der Reibungszahl verläuft, von {1} bis {2}.",
    ),
    (
        "question.traction.sketch_limit.hint",
        "Last, die auf die Antriebsachse wandert, lässt sie mehr schieben; Last, die sie verlässt, weniger. Am Ende hat der Motor vielleicht kein Drehmoment mehr.",
    ),
    (
        "question.traction.uphill",
        "Antriebslayout {0} bei einer Steigung von {1}: Welche Beschleunigung lassen die Reifen höchstens zu?",
    ),
    (
        "question.traction.uphill.hint",
        "Die Steigung verlagert schon im Stand Last auf die Hinterachse und verbraucht einen Teil der Kraft.",
    ),
    (
        "question.traction.what_limits",
        "Anordnung F1R1 mit fester Aufteilung: Die Vorderachse bringt {0} der Antriebskraft auf. Was begrenzt die Beschleunigung?",
    ),
    (
        "question.traction.what_limits.hint",
        "Vergleichen Sie den Kraftanteil vorn mit dem Lastanteil vorn an der Grenze, nicht im Stand.",
    ),
    (
        "question.traction.wrong_line.hint",
        "Die letzte Zeile muss den Haftbeiwert des Bodens ergeben, denn die Reifen rutschen. Ab welcher Zeile läuft es anders?",
    ),
    (
        "question.turn_in_place.change.hint",
        "Schreiben Sie den Wert als Produkt: Reibung, Last, ein Anteil, der an der Form des Autos hängt, ein Hebelarm. Was davon ändert sich?",
    ),
    (
        "question.turn_in_place.drift",
        "Bei welcher Steigung rutscht das Auto bei einer langsamen vollen Drehung auf der Stelle {0} talwärts?",
    ),
    (
        "question.turn_in_place.drift.hint",
        "Die ganze Reibung ist schon verbraucht. Ein Schub von der Seite dreht nur ihre Richtung: Sie antwortet im Verhältnis der Abdrift zum Gleiten.",
    ),
    (
        "question.turn_in_place.drilling",
        "Wie groß ist das Bohrmoment aller vier Aufstandsflächen höchstens?",
    ),
    (
        "question.turn_in_place.drilling.hint",
        "Die Aufstandsfläche eines Rades ist N/p. Die Schranke ist ein Drittel der Reibung mal der Wurzel dieser Fläche.",
    ),
    (
        "question.turn_in_place.energy",
        "Wie viel Energie geht bei einer vollen Drehung auf der Stelle in Reifen und Boden?",
    ),
    (
        "question.turn_in_place.energy.hint",
        "Reibkraft mal den Weg, den jede Aufstandsfläche gleitet. Der Weg ist länger als der Kreis, dem die Räder folgen, denn sie drehen sich auch.",
    ),
    (
        "question.turn_in_place.feasible",
        "Anordnung {0}: Kann das Auto damit hier auf der Stelle wenden, und warum?",
    ),
    (
        "question.turn_in_place.feasible.hint",
        "Erstens: Welche Achsen können ihre zwei Räder gegeneinander antreiben? Dann: Was müssen diese Räder mitziehen?",
    ),
    (
        "question.turn_in_place.harder_axle",
        "Die Räder welcher Achse müssen beim Wenden auf der Stelle stärker schieben?",
    ),
    (
        "question.turn_in_place.harder_axle.hint",
        "Mehr Last bedeutet mehr Reibung, und der Drehpunkt liegt näher an der schwereren Achse. Was macht das mit der Richtung ihres Gleitens?",
    ),
    (
        "question.turn_in_place.lengthwise",
        "Das Auto wendet auf der Stelle, alle vier Räder sind angetrieben. Welcher Anteil der Reibung zeigt längs der Räder?",
    ),
    (
        "question.turn_in_place.lengthwise.hint",
        "Sehen Sie das Auto von oben an: Radstand, Spurweite und die Diagonale zwischen zwei Rädern bilden ein Dreieck.",
    ),
    (
        "question.turn_in_place.needed_friction",
        "Bei welchem Gleitbeiwert braucht das Wenden auf der Stelle ein mittleres Moment von {0} an jedem Rad?",
    ),
    (
        "question.turn_in_place.needed_friction.hint",
        "Das Moment wächst im Verhältnis zur Reibung. Bestimmen Sie es zuerst für einen Wert.",
    ),
    (
        "question.turn_in_place.read_torque",
        "Das Diagramm gehört zu einem Fahrzeug, das auf der Stelle dreht. Welches Drehmoment braucht im Mittel jedes Rad bei der Gleitreibung {0}?",
    ),
    (
        "question.turn_in_place.read_torque.hint",
        "Gehen Sie von der Reibung hinauf zur Linie, dann hinüber zum Drehmoment. Schätzen Sie zwischen den Gitterlinien.",
    ),
    (
        "question.turn_in_place.tread",
        "Nimm den Abriebbeiwert als {0}. Wie viel Profil verlieren die vier Reifen zusammen bei einer vollen Drehung?",
    ),
    (
        "question.turn_in_place.tread.hint",
        "Zuerst die Energie der Drehung. Gummi wiegt 1150 kg/m³.",
    ),
    (
        "question.turn_in_place.wheel_torque",
        "Das Auto wendet auf der Stelle, alle vier Räder sind angetrieben. Wie groß ist das mittlere Moment an einem Rad?",
    ),
    (
        "question.turn_in_place.wheel_torque.hint",
        "Jede Aufstandsfläche nutzt all ihre Reibung, aber nur der Teil, der längs des Rades zeigt, braucht Moment.",
    ),
    (
        "question.turn_in_place.wrong_line.hint",
        "Sehen Sie bei jeder Zeile nach, wo sie am Fahrzeug gilt: welche Achse, wie viele Räder, welcher Hebel?",
    ),
    (
        "question.unit",
        "Eine Zahl allein gilt in {0}; andere Einheiten werden auch gelesen.",
    ),
    ("question.verdict", "Sie sagten {0}. Es sind {1}: {2}."),
    (
        "question.verdict_find",
        "Sie sagten {0}. Das ergibt: {1}, {2} statt {3}, {4}. Die Antwort ist {5}.",
    ),
    (
        "question.verdict_line",
        "Im Mittel liegt Ihre Linie um {0} daneben, am weitesten bei {1}: Sie zeichneten {2}, richtig ist {3}.",
    ),
    (
        "question.verdict_nothing",
        "Sie sagten {0}. Damit kann das Auto nicht so sein, wie die Frage sagt. Die Antwort ist {1}.",
    ),
    (
        "question.verdict_right",
        "Sie sagten: {0}. Das ist richtig.",
    ),
    (
        "question.verdict_wrong",
        "Sie sagten: {0}. Richtig ist: {1}.",
    ),
    (
        "question.why.all_tyres",
        "μ·g braucht die Reibung aller vier Reifen. Hier treibt eine Achse an, und sie trägt einen Teil des Gewichts.",
    ),
    (
        "question.why.arm",
        "Die Trägheitskraft hat den Hebelarm h, und die Achslasten halten ihr über den Radstand L das Gleichgewicht.",
    ),
    (
        "question.why.arm_axle",
        "b ist der Abstand des Schwerpunkts von der Hinterachse: was a vom Radstand übrig lässt.",
    ),
    (
        "question.why.axle",
        "Eine Achse trägt umso mehr, je weiter der Schwerpunkt von der anderen entfernt ist: in der vorderen Last steht b.",
    ),
    (
        "question.why.base_speed",
        "Leistung ist Drehmoment mal Drehzahl, also ist die Eckdrehzahl Leistung durch Drehmoment.",
    ),
    (
        "question.why.both_wheels",
        "Beide Räder der Achse brauchen Raum, das linke und das rechte.",
    ),
    (
        "question.why.box_fill",
        "Eine Antriebseinheit füllt ihren Kasten nicht: er ist größer als das Volumen dessen, was darin ist.",
    ),
    (
        "question.why.field",
        "Über der Eckdrehzahl wird das Feld geschwächt: es nimmt ab, wenn die Drehzahl steigt.",
    ),
    (
        "question.why.front_sign",
        "Die Beschleunigung nimmt der Vorderachse Last und damit Kraft: Der Nenner ist 1 + μ·h/L.",
    ),
    (
        "question.why.gearing",
        "Durch das Getriebe dreht der Motor i-mal so schnell wie das Rad.",
    ),
    (
        "question.why.geometry",
        "Die Vorderräder werden um Radstand durch Radius der Bahn eingeschlagen, nicht durch ihren Durchmesser.",
    ),
    (
        "question.why.gradient",
        "Ein Schräglaufwinkel der Vorderreifen verlangt mehr Lenkwinkel, einer der Hinterreifen weniger.",
    ),
    (
        "question.why.height",
        "Ein höherer Schwerpunkt verlagert mehr Last, also passt beides schon bei kleinerer Beschleunigung zusammen: h steht unter dem Bruchstrich.",
    ),
    (
        "question.why.lever",
        "Drehmoment ist Kraft mal Hebel, hier der Radius des Rades.",
    ),
    (
        "question.why.magnet",
        "Ein Magnet lässt sich nicht abschalten: sein Feld wandert auch dann durch das Eisen, wenn der Motor kein Drehmoment gibt.",
    ),
    (
        "question.why.mass",
        "Eine Masse ist keine Kraft. Das Gewicht ist Masse mal g.",
    ),
    (
        "question.why.mean",
        "Das Mittel zweier Kräfte ist die Hälfte ihrer Summe.",
    ),
    (
        "question.why.ratio",
        "Nach der Hinterachse ist gefragt, also steht ihre Last über dem Bruchstrich.",
    ),
    (
        "question.why.side",
        "Beim Beschleunigen geht Last auf die Hinterachse und verlässt die Vorderachse.",
    ),
    (
        "question.why.slide_arm",
        "Die hinteren Aufstandsflächen liegen L − x hinter dem Drehpunkt; x ist der Abstand zu den vorderen.",
    ),
    (
        "question.why.square",
        "Die Querbeschleunigung wächst mit dem Quadrat der Geschwindigkeit.",
    ),
    (
        "question.why.static",
        "Der Anteil am Drehmoment folgt aus der Zahl der Motoren, nicht aus der Last im Stand.",
    ),
    (
        "question.why.two_units",
        "Zwei Antriebseinheiten brauchen die doppelte Breite von einer.",
    ),
    (
        "question.why.two_wheels",
        "Zwei Räder teilen sich die Last der Achse: Jedes hält mit der Hälfte.",
    ),
    (
        "question.why.understeer",
        "Wo der Eigenlenkgradient über null liegt, braucht man bei Fahrt mehr Lenkwinkel, nicht weniger.",
    ),
    (
        "question.why.whole_unit",
        "Neben dem Motor brauchen Umrichter und Getriebe Raum.",
    ),
    ("question.wrong_line", "Zeile mit dem Fehler"),
    ("reason.at_full_lock", "Die Räder sind am Anschlag."),
    ("reason.both_always", "beide Achsen teilen immer"),
    (
        "reason.both_too_narrow",
        "beide Achsen sind zu schmal für ihre Einheiten",
    ),
    (
        "reason.cannot_start_on_grade",
        "kann auf der Steigung nicht anfahren",
    ),
    (
        "reason.cannot_turn_in_place",
        "kann nicht auf der Stelle wenden",
    ),
    (
        "reason.cannot_vector_torque",
        "keine Achse hat einen Motor je Rad",
    ),
    ("reason.does_not_fit", "ihre Antriebseinheiten passen nicht"),
    (
        "reason.drive_too_weak",
        "Die Motoren können diese Geschwindigkeit nicht halten.",
    ),
    (
        "reason.front_and_rear_slip",
        "vorn und hinten rutschen die Reifen",
    ),
    ("reason.front_first", "vorn zuerst, hinten bei Bedarf"),
    ("reason.front_lift", "die Vorderachse hebt ab"),
    (
        "reason.front_slides",
        "Die Vorderreifen haben keine Haftung mehr: Das Auto schiebt nach außen.",
    ),
    ("reason.front_slip", "die Vorderreifen rutschen"),
    (
        "reason.front_too_narrow",
        "die Vorderachse ist zu schmal für ihre Einheiten",
    ),
    (
        "reason.launch_air_lifts",
        "Die Luft hebt die Vorderräder an.",
    ),
    ("reason.launch_done", "Alle Marken sind passiert."),
    (
        "reason.launch_no_grip",
        "Die Reifen können nicht halten, was es braucht, um das Auto hier zu bewegen.",
    ),
    (
        "reason.launch_time_over",
        "Die simulierte Zeit von zwei Minuten ist abgelaufen.",
    ),
    (
        "reason.launch_too_weak",
        "Die Motoren sind zu schwach, um das Auto hier zu bewegen.",
    ),
    ("reason.launch_top_speed", "Das Auto wird nicht schneller."),
    ("reason.meets_brief", "erfüllt die Vorgabe"),
    ("reason.misses_target_time", "braucht zu lange auf 60 mph"),
    ("reason.motor_torque", "die Motoren haben nicht mehr Moment"),
    (
        "reason.motor_torque_too_small",
        "Die Motoren geben weniger Moment, als die Reifen entgegensetzen.",
    ),
    (
        "reason.no_counter_rotation",
        "Keine Achse kann ihre zwei Räder gegeneinander antreiben: Ein Motor dreht beide gleich herum.",
    ),
    (
        "reason.no_end",
        "Soweit gerechnet wurde, beendet sie nichts.",
    ),
    ("reason.one_axle", "eine Achse treibt an"),
    (
        "reason.pair_holds_itself",
        "Das angetriebene Paar muss auch die eigene Achse gegen die Seitenkraft halten; was von seiner Reibung übrig bleibt, dreht das Auto nicht auf der Stelle.",
    ),
    ("reason.range_too_short", "kommt nicht weit genug"),
    ("reason.rear_first", "hinten zuerst, vorn bei Bedarf"),
    (
        "reason.rear_slides",
        "Die Hinterreifen haben keine Haftung mehr: Das Heck bricht aus.",
    ),
    ("reason.rear_slip", "die Hinterreifen rutschen"),
    (
        "reason.rear_too_narrow",
        "die Hinterachse ist zu schmal für ihre Einheiten",
    ),
    (
        "reason.sides_too_different",
        "Die Seiten greifen so verschieden, dass der Drehpunkt außerhalb der Räder liegt.",
    ),
    (
        "reason.spin_drifts",
        "Es dreht sich und rutscht dabei ständig talwärts.",
    ),
    (
        "reason.spin_leaves_place",
        "Es dreht sich um einen Punkt, der nicht zwischen seinen Rädern liegt, und fährt davon.",
    ),
    (
        "reason.spin_never_settles",
        "Es wird in der simulierten Minute nicht stationär.",
    ),
    (
        "reason.spin_never_starts",
        "Es beginnt nie: Die Reifen halten den Motoren stand.",
    ),
    (
        "reason.spin_settles",
        "Es dreht an bis zur stationären Drehung auf der Stelle.",
    ),
    ("reason.tips_over", "Das Auto kippt um."),
    ("reason.turn_held", "Die Kurve wird gehalten."),
    (
        "reason.undriven_axle_holds",
        "Das angetriebene Paar kann die andere Achse nicht quer ziehen; mit durchdrehenden Rädern schwenkt das Auto nur um jene Achse.",
    ),
    ("reason.units_fit", "jede Antriebseinheit passt"),
    ("reason.way_beyond_grip", "Die Reifen halten es nicht."),
    (
        "reason.way_beyond_motors",
        "Die Motoren sind zu schwach dafür.",
    ),
    (
        "reason.way_needs_a_pair",
        "Es braucht an dieser Achse einen Motor je Rad, und dieser Antrieb hat ihn nicht.",
    ),
    (
        "reason.way_no_turn",
        "Die Kurve selbst ist nicht zu halten.",
    ),
    ("reason.way_possible", "Reifen und Maschinen schaffen es."),
    (
        "reason.wheel_spins",
        "Das innere angetriebene Rad trägt zu wenig Last und dreht durch.",
    ),
    (
        "reason.wheels_driven_apart",
        "Motoren treiben die Räder beider Seiten gegeneinander und haben das Moment dafür.",
    ),
    (
        "reason.wheels_driven_apart_torque_unknown",
        "Motoren treiben die Räder beider Seiten gegeneinander; ob sie das Moment dafür haben, war nicht gefragt.",
    ),
    ("script.copied", "Kopiert."),
    (
        "script.refused",
        "Diese Seite oder dieser Browser erlaubt es nicht.",
    ),
    (
        "script.restarted",
        "Dieses Element hatte angehalten und ist mit Ihren Werten neu gestartet.",
    ),
    ("script.saved", "Gespeichert als {0}."),
    (
        "script.scenario",
        "Das Szenario konnte nicht gelesen werden: Es muss JSON von höchstens 1 MB sein.",
    ),
    (
        "script.stopped",
        "Dieses Element hat angehalten; zu sehen ist das letzte Bild. Laden Sie die Seite neu, um es wieder zu starten.",
    ),
    (
        "script.unavailable",
        "Das lebende Element konnte hier nicht starten; dies ist sein festes Bild.",
    ),
    ("site.all_pages", "Inhalt"),
    ("site.answer", "Antwort."),
    ("site.answer_and_working", "Antwort und Rechenweg"),
    ("site.beside", "Vorige und nächste Seite"),
    ("site.check_case", "Veröffentlichter Fall"),
    ("site.check_difference", "Unterschied"),
    ("site.check_here", "Hier"),
    ("site.check_ids", "Prüfung"),
    ("site.check_label", "Woher bekannt"),
    ("site.check_published", "Veröffentlicht"),
    ("site.check_source", "Quelle"),
    ("site.check_tolerance", "Toleranz"),
    ("site.course_answers", "Antworten"),
    ("site.course_count", "{0} Fragen"),
    ("site.course_key", "Lösungsblatt"),
    ("site.course_lesson", "Unterrichtsplan"),
    ("site.course_plan", "Plan der Stunde"),
    ("site.course_questions", "Fragen"),
    ("site.course_topic", "Thema"),
    (
        "site.disclaimer",
        "Für Unterricht und frühen Vergleich. Ersetzt keine zugelassene Ingenieurleistung; örtliches Recht und die Anweisungen des Fahrzeugherstellers gehen vor.",
    ),
    ("site.embed_classic", "Skript, alles in einer Datei"),
    ("site.embed_copied", "Kopiert."),
    ("site.embed_copy", "Kopieren"),
    ("site.embed_frame", "Rahmen"),
    ("site.embed_image", "Stehendes Bild"),
    ("site.embed_module", "Skript, als Modul"),
    (
        "site.embed_no_script",
        "Das Zusammenstellen braucht ein Skript. Ohne Skript nehmen Sie den Rahmen eines Themas und setzen die Adresse dieser Seiten an die Stelle von example.org/axlewright.",
    ),
    ("site.embed_save", "Bild speichern"),
    ("site.embed_topic", "Thema"),
    ("site.group_reference", "Nachschlagen"),
    ("site.group_start", "Hier beginnen"),
    ("site.group_teach", "Unterrichten"),
    ("site.group_topics", "Themen"),
    ("site.group_use", "Anwenden"),
    ("site.interface_default", "Vorgabe"),
    ("site.interface_help", "Was es tut"),
    ("site.interface_kind", "Typ"),
    ("site.interface_name", "Bezeichnung"),
    ("site.interface_schema", "JSON-Schema"),
    ("site.interface_takes", "Nimmt"),
    ("site.interface_topic", "Thema"),
    ("site.interface_topics", "Themen"),
    (
        "site.invented",
        "Alle hier gezeigten Fahrzeuge sind erfunden; keines steht für ein wirkliches Auto.",
    ),
    ("site.lesson_discuss", "Besprechen."),
    (
        "site.lesson_example",
        "Das Beispiel auf der Seite Schritt für Schritt durchgehen; im Element eine Zahl öffnen und denselben Schritt dort finden.",
    ),
    ("site.lesson_explore", "Mit dem Element erkunden."),
    ("site.lesson_minutes", "Minuten"),
    (
        "site.lesson_open",
        "Die Eingangsfrage stellen. Antworten an der Tafel sammeln, noch keine bewerten.",
    ),
    (
        "site.lesson_practice",
        "Alle beantworten die Übungsfragen der Seite allein und sagen vorher das Ergebnis voraus.",
    ),
    ("site.lesson_predict", "Voraussagen."),
    ("site.lesson_total", "zusammen"),
    ("site.lesson_what", "Was geschieht"),
    (
        "site.licence",
        "Frei verwendbar unter der MIT- oder der Apache-2.0-Lizenz.",
    ),
    (
        "site.new_version",
        "Eine neue Fassung dieser Seiten ist da.",
    ),
    ("site.new_version_take", "Übernehmen"),
    ("site.new_window", "Öffnet ein neues Fenster"),
    (
        "site.no_questions",
        "Zu diesem Thema gibt es noch keine Fragen.",
    ),
    (
        "site.no_script",
        "Dieses Element braucht Skript, das hier abgeschaltet ist.",
    ),
    ("site.pages", "Seiten"),
    (
        "site.practice_how",
        "Antworten Sie, bevor Sie nachsehen: erst schätzen, dann rechnen. Die Zahlen kommen aus einem Startwert, alle haben also dieselben.",
    ),
    ("site.question_number", "Frage {0}"),
    ("site.search", "Suchen"),
    (
        "site.search_none",
        "Nichts gefunden. Versuchen Sie ein anderes Wort oder einen Teil davon.",
    ),
    ("site.skip", "Zum Inhalt"),
    ("site.source_equations", "Gleichungen"),
    ("site.source_used", "Verwendet von"),
    ("site.source_values", "Veröffentlichte Werte"),
    ("site.surface", "Fahrbahn"),
    ("site.surface_known", "Woher wir es wissen"),
    ("site.surface_memory", "aus dem Gedächtnis"),
    ("site.surface_peak", "Haftbeiwert"),
    ("site.surface_quoted", "in einem anderen Text zitiert"),
    ("site.surface_sliding", "Gleitbeiwert"),
    ("site.symbol", "Zeichen"),
    ("site.symbol_inputs", "Eingaben"),
    ("site.symbol_name", "Wofür es steht"),
    ("site.symbol_unit", "Einheit"),
    (
        "source.adhesion",
        "J. Y. Wong, Theory of Ground Vehicles, Tabelle 1.3 (zitiert): Gleitreibung",
    ),
    (
        "source.choice",
        "Gewichtetes Mittel von Anteilen, bester durch eigenen Wert; Gewichte und Stückkosten sind erfundene Vorgaben. Was jede Anordnung kann, kommt aus den Themen.",
    ),
    (
        "source.drilling",
        "Schranke: Formel nach Gough (aus dem Gedächtnis). Gleitende Aufstandsfläche: hergeleitet, gleichmäßiger Druck",
    ),
    (
        "source.idle_drag",
        "Hergeleitet: Verluste quadratisch im Drehmoment; Fluss über der Eckdrehzahl umgekehrt proportional zur Drehzahl",
    ),
    (
        "source.launch",
        "Bewegungsgleichung, aus dem Stand integriert (Dormand und Prince, Ordnung 5)",
    ),
    (
        "source.load_transfer",
        "Jazar, Vehicle Dynamics: Theory and Application, Kap. 2, Gl. 2.121–2.122",
    ),
    (
        "source.motor_split",
        "Gleichgewicht der Kräfte und Momente; gleiche Motoren teilen das Moment nach ihrer Zahl auf",
    ),
    (
        "source.packaging",
        "Volumen von Teilen, die dieselbe Leistung führen, addieren sich; Geometrie eines Rads, das um seine eigene Mitte schwenkt.",
    ),
    (
        "source.planar",
        "Ebenes Zweispurmodell: Gleichgewicht der Kräfte und des Giermoments im stationären Zustand",
    ),
    (
        "source.single_track",
        "T. D. Gillespie, Fundamentals of Vehicle Dynamics, Kap. 6: Einspurmodell (aus dem Gedächtnis)",
    ),
    ("source.spin", "Aus dem Lauf des ebenen Modells abgelesen"),
    (
        "source.squat",
        "Aufbau auf zwei unabhängigen Federn, Nickträgheit m·a·b; übliche Praxis, ohne Quelle",
    ),
    ("source.statics", "Gleichgewicht der Kräfte und Momente"),
    (
        "source.traction",
        "Wong, Theory of Ground Vehicles, Kap. 3; Gillespie, Fundamentals of Vehicle Dynamics, Kap. 2",
    ),
    (
        "source.turn_in_place",
        "Hergeleitet: Coulomb-Reibung wirkt an jeder Aufstandsfläche der Gleitgeschwindigkeit entgegen",
    ),
    (
        "source.vectoring",
        "Hergeleitet: Kraftunterschied mal halbe Spurweite ist ein Moment",
    ),
    (
        "source.wear",
        "Festgemacht an Giechaskiel et al., Sustainability 16(2) 522, 2024 (gelesen); Spanne nach Grosch 2008 (aus dem Gedächtnis); die Reibungsnutzung im gewöhnlichen Fahrbetrieb ist eine Annahme",
    ),
    (
        "starter.intro",
        "Eine Zeile, die mit # beginnt, ist ein Kommentar; entfernen Sie das #, um das Feld zu setzen.",
    ),
    ("step.acceleration_gain", "Querbeschleunigung je Lenkwinkel"),
    (
        "step.ackermann_angle",
        "Ackermannwinkel, der Lenkwinkel bei Schrittgeschwindigkeit",
    ),
    (
        "step.after_rollout",
        "die Uhr läuft erst nach dem ersten Fuß",
    ),
    (
        "step.against_found",
        "Drehung gegen die Schranke, aus dem Gleichgewicht der Kräfte und Momente",
    ),
    (
        "step.apparent_mass",
        "Scheinbare Masse mit Rädern und Läufern",
    ),
    ("step.available", "Moment, das ein Motor seinem Rad gibt"),
    (
        "step.axle_copper",
        "Kupfer einer Achse, je Drehmoment im Quadrat",
    ),
    (
        "step.axle_fixed",
        "Verlust einer Achse, der nicht von ihrem Drehmoment abhängt",
    ),
    (
        "step.base_speed",
        "Eckdrehzahl, über der das Feld geschwächt wird",
    ),
    (
        "step.battery_energy",
        "Energie aus der Batterie: Fahrwiderstand, Änderung der Bewegungsenergie, Motoren, Getriebe, Bremsen, Nebenverbraucher",
    ),
    ("step.bearing_loss", "Lager und Luftreibung"),
    ("step.best_share", "Kleinster Verlust: c_f·T_f = c_r·T_r"),
    (
        "step.booster_share",
        "Anteil der Antriebszeit, in der beide Achsen treiben",
    ),
    (
        "step.both_above",
        "Kraft, ab der beide Achsen zusammen weniger verlieren als eine: dort geben die Motoren T_2",
    ),
    (
        "step.brake_deceleration",
        "Verzögerung, wenn nichts die Bremse ausgleicht",
    ),
    ("step.brake_force", "Kraft des einen gebremsten Rades"),
    ("step.brake_heat", "Wärme in der Bremse"),
    (
        "step.brake_power",
        "Leistung aus der Batterie, die die Bremse ausgleicht",
    ),
    (
        "step.braking_torque",
        "Drehmoment, mit dem die Motoren bremsen dürfen",
    ),
    (
        "step.centre",
        "Drehpunkt: Die Seitenkräfte sind im Gleichgewicht",
    ),
    (
        "step.centre_even",
        "Drehpunkt: in der Mitte, weil beide Achsen gleich viel tragen",
    ),
    (
        "step.centre_rolls",
        "Drehpunkt: auf der Achse, deren Räder nur rollen",
    ),
    (
        "step.cg_to_rear",
        "Abstand des Schwerpunkts vor der Hinterachse",
    ),
    (
        "step.changes_at",
        "Änderung, ab der eine andere Anordnung empfohlen wird, als Anteil (Werte in SI)",
    ),
    (
        "step.characteristic_speed",
        "Geschwindigkeit, bei der der Lenkwinkel das Doppelte des Ackermannwinkels ist",
    ),
    ("step.cost", "Kosten der Anordnung"),
    (
        "step.critical_speed",
        "Geschwindigkeit, oberhalb derer das Auto seinen Kurs nicht hält",
    ),
    ("step.cycle_distance", "Strecke des Zyklus"),
    ("step.drag", "Luftwiderstand"),
    (
        "step.drift",
        "Abdrift talwärts bei einer langsamen Drehung, in erster Ordnung der Steigung",
    ),
    (
        "step.drift_across",
        "Kraft, die einer Abdrift von 1 m je Radiant quer zum Auto antwortet",
    ),
    (
        "step.drift_along",
        "Kraft, die einer Abdrift von 1 m je Radiant längs des Autos antwortet",
    ),
    (
        "step.drilling",
        "Bohrmoment beider Aufstandsflächen der Achse beim Gleiten",
    ),
    (
        "step.drilling_as_bound",
        "die Aufstandsfläche gleitet kaum, daher ist nur die Schranke bekannt",
    ),
    (
        "step.drilling_bound",
        "obere Schranke des Bohrmoments der Achse: nur verdrehte Aufstandsflächen",
    ),
    (
        "step.drilling_bound_sum",
        "obere Schranke des Bohrmoments aller Aufstandsflächen",
    ),
    ("step.drilling_sum", "Bohrmoment aller Aufstandsflächen"),
    ("step.drive_cost", "Kosten aller Antriebseinheiten"),
    (
        "step.drive_force",
        "Antriebskraft aus dem Moment aller Motoren an den Rädern",
    ),
    ("step.drive_mass", "Masse aller Antriebseinheiten"),
    (
        "step.drive_power",
        "Leistung aus der Batterie, mit der mittleren Drehzahl der angetriebenen Räder",
    ),
    ("step.drive_volume", "Volumen aller Antriebseinheiten"),
    ("step.drop_rear", "Absenken über der Hinterachse"),
    (
        "step.end_speed",
        "Geschwindigkeit am Ende: aus der Fahrt abgelesen",
    ),
    (
        "step.energy",
        "Energie, die beim Gleiten in einer vollen Drehung verloren geht",
    ),
    (
        "step.energy_bound",
        "Energie einer Drehung, wenn die Schranke ständig bremste",
    ),
    (
        "step.energy_per_distance",
        "Energie des Zyklus für seine Strecke",
    ),
    ("step.energy_per_km", "Energie je Strecke"),
    ("step.flux", "Fluss als Anteil des vollen"),
    (
        "step.force",
        "Antriebskraft, die diese Beschleunigung braucht",
    ),
    ("step.force_against", "Kraft eines Rades gegen die Schranke"),
    ("step.force_at_wheels", "Kraft an den Rädern"),
    ("step.force_front", "Antriebskraft eines Vorderrades"),
    ("step.force_mean", "mittlere Antriebskraft je Rad"),
    (
        "step.force_per_wheel",
        "Antriebskraft je Rad: der Teil seiner Reibung, der längs des Rades zeigt",
    ),
    ("step.force_rear", "Antriebskraft eines Hinterrades"),
    (
        "step.force_rest",
        "Antriebskraft eines rollenden Rades: was die andere Achse übrig lässt",
    ),
    ("step.front_force", "Antriebskraft der Vorderachse"),
    (
        "step.front_lift",
        "Beschleunigung, bei der die Vorderachse nichts mehr trägt",
    ),
    ("step.front_load", "Vorderachslast"),
    (
        "step.front_reach",
        "Ausladung eines Vorderrads von seiner Mitte nach innen, am Anschlag",
    ),
    ("step.front_share", "Anteil der Vorderachse an der Last"),
    (
        "step.front_torque_share",
        "Anteil der Vorderachse am Drehmoment",
    ),
    (
        "step.front_unaccelerated",
        "Vorderachslast bei konstanter Geschwindigkeit",
    ),
    ("step.front_use", "Kraftschlussausnutzung der Vorderachse"),
    (
        "step.grip",
        "Antriebskraft einer Achse, die rutscht: all ihre Reibung",
    ),
    (
        "step.grip_until",
        "letzter Zeitpunkt, zu dem der Kraftschluss und nicht der Motor diese Achse begrenzt: aus der Fahrt abgelesen",
    ),
    (
        "step.heat",
        "Gleitenergie an einem Reifen bei einer Drehung",
    ),
    ("step.heave", "Hub des Schwerpunkts"),
    (
        "step.ideal_share",
        "idealer Kraftanteil vorn im Stand: der Lastanteil vorn",
    ),
    (
        "step.idle_induction",
        "Eine Asynchronmaschine ohne Strom: nur Lager",
    ),
    (
        "step.idle_loss_per_km",
        "Verlust in Motoren ohne Drehmoment",
    ),
    (
        "step.idle_magnet",
        "Ein Motor mit Magneten ohne Drehmoment: Eisen, Feldschwächung, Lager",
    ),
    ("step.iron_loss", "Eisenverlust bei vollem Fluss"),
    (
        "step.lateral_acceleration",
        "Querbeschleunigung der Kurvenfahrt",
    ),
    (
        "step.lateral_limit",
        "Querbeschleunigung der schnellsten Kurvenfahrt, die gehalten wird",
    ),
    (
        "step.lateral_scrub",
        "Moment, wenn jede Aufstandsfläche genau quer radierte",
    ),
    ("step.left_with_one", "Was mit einer Einheit übrig bleibt"),
    ("step.left_with_two", "Was mit zwei Einheiten übrig bleibt"),
    (
        "step.lengthwise",
        "Anteil der Reibung, der längs der Räder zeigt",
    ),
    ("step.lift_front", "Auftrieb an der Vorderachse"),
    ("step.lift_rear", "Auftrieb an der Hinterachse"),
    (
        "step.like_motors",
        "Grenze, wenn jeder Motor das gleiche Moment gibt: Bewegungsgleichung, gelöst mit Reibung und Achslasten",
    ),
    (
        "step.limit_all",
        "Grenze des Allradantriebs: Jede Achse gibt alles, daher hebt sich die Achslastverlagerung auf",
    ),
    (
        "step.limit_fixed_front",
        "Grenze bei fester Aufteilung: Die Vorderreifen rutschen zuerst",
    ),
    (
        "step.limit_fixed_rear",
        "Grenze bei fester Aufteilung: Die Hinterreifen rutschen zuerst",
    ),
    (
        "step.limit_front",
        "Grenze des Vorderradantriebs: Die treibende Achse verliert Last",
    ),
    (
        "step.limit_gained",
        "Gewinn an der Traktionsgrenze gegenüber der besten verglichenen Anordnung mit weniger Motoren",
    ),
    (
        "step.limit_lift",
        "Grenze: Die Vorderachse verlässt den Boden",
    ),
    (
        "step.limit_rear",
        "Grenze des Hinterradantriebs: Die treibende Achse gewinnt Last",
    ),
    ("step.limit_speed", "Geschwindigkeit dieser Kurvenfahrt"),
    (
        "step.lock_found",
        "voller Einschlag: die Bewegung mit dem kleinsten Gleitverlust",
    ),
    (
        "step.lock_sweep",
        "voller Einschlag: Abstand der Vorderachse vom Drehpunkt",
    ),
    (
        "step.matching",
        "Beschleunigung, bei der der Lastanteil vorn gleich dem Momentanteil ist",
    ),
    ("step.mixed_brake", "Kraft des gebremsten Vorderrades"),
    ("step.mixed_heat", "Wärme in der Vorderradbremse"),
    ("step.mixed_motor", "Kraft an jedem Hinterrad"),
    ("step.mixed_power", "Leistung aus der Batterie für beides"),
    (
        "step.motion_all",
        "Grenze, wenn jede Achse alles gibt: Bewegungsgleichung, gelöst mit Reibung und Achslasten",
    ),
    (
        "step.motion_motor",
        "Bewegungsgleichung, gelöst mit den Motoren an ihrem Moment",
    ),
    (
        "step.motion_slip",
        "Bewegungsgleichung, gelöst zusammen mit der Reibung und den Achslasten unten",
    ),
    (
        "step.motor_energy",
        "Energie der Motoren: Bewegung des Autos und seiner drehenden Teile, Arbeit gegen Luftwiderstand, Rollwiderstand und Steigung, Wärme aus Schlupf",
    ),
    ("step.motor_loss", "Verlust aller Motoren"),
    (
        "step.motor_loss_per_km",
        "Verlust in den Motoren je Strecke",
    ),
    (
        "step.motor_pair_force",
        "Kraft an jedem Rad, außen vorwärts und innen rückwärts",
    ),
    (
        "step.motor_pair_power",
        "ein Motor treibt, der andere speist zurück; der Antrieb verliert beide Male einen Teil",
    ),
    ("step.motor_speed", "Drehzahl der Motoren"),
    ("step.motors", "Motoren: vorn und hinten"),
    (
        "step.other_holds",
        "Moment, mit dem die andere Achse dem Ziehen zur Seite widersteht",
    ),
    ("step.overshoot", "größte Gierrate über der stationären"),
    (
        "step.pair_drives",
        "das Höchste, was das angetriebene Paar um die eigene Achse aufbringt",
    ),
    (
        "step.parts",
        "Teile: Motor, Wechselrichter und Getriebe je Motor, zwei Seitenwellen je angetriebener Achse, ein Differenzial, wo ein Motor zwei Räder treibt",
    ),
    ("step.parts_total", "Teile der Anordnung"),
    (
        "step.patch_length",
        "Länge einer reifenbreiten Aufstandsfläche",
    ),
    ("step.path_radius", "Abstand des Schwerpunkts vom Drehpunkt"),
    (
        "step.peak_slip",
        "größter Schlupf dieser Achse: aus der Fahrt abgelesen",
    ),
    ("step.pitch", "Nickwinkel, Bug nach unten positiv"),
    ("step.power_density", "Leistungsdichte des ganzen Satzes"),
    (
        "step.power_needed",
        "größte Leistung des Motors, der am stärksten schiebt, auf dem Weg bis zur gefragten Geschwindigkeit: aus seiner Kraft und der Geschwindigkeit dort",
    ),
    ("step.range", "Reichweite"),
    (
        "step.range_lost",
        "Mehr Reichweite, wenn Motoren ohne Drehmoment nichts verlören, was E_0 braucht",
    ),
    ("step.range_of_layout", "Reichweite mit der Batterie"),
    ("step.ratio", "Last hinten durch Last vorn"),
    (
        "step.reach",
        "Giermoment der Längskräfte, links gegen rechts, und dessen, was die Querkräfte gewinnen oder verlieren",
    ),
    ("step.rear_force", "Antriebskraft der Hinterachse"),
    ("step.rear_load", "Hinterachslast"),
    (
        "step.rear_reach",
        "Ausladung eines Hinterrads von seiner Mitte nach innen",
    ),
    (
        "step.rear_unaccelerated",
        "Hinterachslast bei konstanter Geschwindigkeit",
    ),
    ("step.rear_use", "Kraftschlussausnutzung der Hinterachse"),
    ("step.resisting", "Moment der Seitenkräfte um den Drehpunkt"),
    ("step.rise_front", "Anheben über der Vorderachse"),
    (
        "step.rise_time",
        "von der halben Lenkung bis neun Zehntel der stationären Gierrate",
    ),
    (
        "step.road_load",
        "Luftwiderstand, Rollwiderstand und Steigung",
    ),
    ("step.room", "Platz zwischen den Rädern"),
    (
        "step.room_left",
        "Was an der engeren angetriebenen Achse übrig bleibt",
    ),
    (
        "step.room_share",
        "Anteil des Platzes an der Hinterachse, den keine Antriebseinheit braucht",
    ),
    ("step.same_force", "an jedem Rad gleich"),
    (
        "step.saved_by_split",
        "Ersparnis gegen gleiches Drehmoment aller Motoren, das E_v braucht",
    ),
    ("step.score", "Wertung: gewichtetes Mittel der Anteile"),
    ("step.shaft_torque", "Drehmoment an den Wellen der Motoren"),
    (
        "step.share",
        "Anteil: der beste, der die Vorgabe erfüllt, durch den eigenen Wert, oder umgekehrt, wo mehr besser ist",
    ),
    (
        "step.shift",
        "Last, die das Antriebsmoment einer Starrachse von einem Rad auf das andere verlagert, im Verhältnis zur Kraft",
    ),
    (
        "step.sideslip",
        "Schwimmwinkel mit dem Schräglaufwinkel, bei dem die Hinterreifen die Kurve halten",
    ),
    ("step.single_sideslip", "Schwimmwinkel des Einspurmodells"),
    ("step.single_steer", "Lenkwinkel des Einspurmodells"),
    ("step.slide_along", "Gleiten längs des Autos je Radiant"),
    (
        "step.slide_front",
        "Gleitgeschwindigkeit einer vorderen Aufstandsfläche durch Gierrate",
    ),
    ("step.slide_in_all", "gesamtes Gleiten je Radiant"),
    (
        "step.slide_rear",
        "Gleitgeschwindigkeit einer hinteren Aufstandsfläche durch Gierrate",
    ),
    ("step.slope_angle", "Neigungswinkel aus der Steigung"),
    (
        "step.speed_at_time",
        "Geschwindigkeit zum gezeigten Zeitpunkt: aus der Fahrt abgelesen",
    ),
    (
        "step.speed_ratio",
        "Radgeschwindigkeit durch Gierrate: Was die Räder hineingeben, nimmt das Gleiten heraus",
    ),
    (
        "step.speed_ratio_even",
        "Radgeschwindigkeit durch Gierrate: Die Momente sind im Gleichgewicht",
    ),
    (
        "step.speed_ratio_rolls",
        "Radgeschwindigkeit durch Gierrate: Die rollenden Räder legen sie fest",
    ),
    (
        "step.spin_energy",
        "Motorenergie: Bewegung, Gleitwärme und Anstieg",
    ),
    ("step.spin_settles", "Zeit, aus dem Lauf abgelesen"),
    ("step.spin_steady", "Gierrate am Ende des Laufs"),
    (
        "step.spin_time",
        "Winkel durch die mittlere Gierrate des Laufs",
    ),
    ("step.spin_way_off", "Weg des Schwerpunkts, geradlinig"),
    ("step.split_force", "Kraft eines Rades längs des Autos"),
    (
        "step.split_force_front",
        "mittlerer Betrag der Kraft der Vorderräder",
    ),
    (
        "step.split_force_rear",
        "mittlerer Betrag der Kraft der Hinterräder",
    ),
    (
        "step.split_found",
        "die Bewegung mit dem kleinsten Gleitverlust",
    ),
    ("step.split_grip", "Reibung einer Aufstandsfläche"),
    (
        "step.split_slide",
        "Gleiten einer Aufstandsfläche je Radiant",
    ),
    ("step.static_front", "Vorderachslast im Stand auf der Ebene"),
    ("step.static_rear", "Hinterachslast im Stand auf der Ebene"),
    (
        "step.steer",
        "Lenkwinkel mit dem Schräglaufwinkel, bei dem die Vorderreifen die Kurve halten",
    ),
    ("step.surface_energy", "Energie im Verhältnis zur Reibung"),
    ("step.surface_torque", "Moment im Verhältnis zur Reibung"),
    (
        "step.swept_area",
        "Fläche, die ein Vorderrad von Anschlag zu Anschlag überstreicht",
    ),
    (
        "step.test_gradient",
        "Eigenlenkgradient der Fahrt auf festem Radius: Änderung des Lenkwinkels durch Änderung der Querbeschleunigung",
    ),
    (
        "step.time_saved",
        "Zeitgewinn gegenüber der schnellsten verglichenen Anordnung mit weniger Motoren",
    ),
    (
        "step.time_to_distance",
        "Zeit: Strecke durch mittlere Geschwindigkeit der Fahrt",
    ),
    (
        "step.time_to_speed",
        "Zeit: Impuls durch die mittlere Antriebskraft abzüglich des mittleren Widerstands, beide über die Fahrt aufsummiert",
    ),
    ("step.torque", "mittleres Moment je Rad"),
    (
        "step.torque_bound",
        "mittleres Radmoment gegen die Schranke",
    ),
    ("step.torque_front", "Moment eines Vorderrades"),
    (
        "step.torque_needed",
        "Moment des Motors, der an der Grenze am stärksten schiebt, aus der Kraft, die er geben muss",
    ),
    ("step.torque_rear", "Moment eines Hinterrades"),
    (
        "step.torque_share",
        "Momentanteil vorn bei gleichen Motoren",
    ),
    (
        "step.transfer",
        "Zuwachs der Hinterachslast gegenüber dem Stand auf der Ebene",
    ),
    (
        "step.trap_speed",
        "Geschwindigkeit dort: was das Mittel aller Kräfte in dieser Zeit ergibt",
    ),
    (
        "step.tread_least",
        "Profilverlust mit dem kleinsten Beiwert der Spanne",
    ),
    (
        "step.tread_lost",
        "Profilverlust bei einer Drehung, alle vier Reifen",
    ),
    (
        "step.tread_most",
        "Profilverlust mit dem größten Beiwert der Spanne",
    ),
    (
        "step.two_to_one",
        "Beschleunigung, bei der die Hinterachse das Doppelte der Vorderachse trägt",
    ),
    (
        "step.tyre_heat",
        "Wärme aus Schlupf, vorn und hinten: Kraft mal Gleitgeschwindigkeit, aufsummiert",
    ),
    (
        "step.understeer_gradient",
        "Eigenlenkgradient: Last durch Schräglaufsteifigkeit zweier Reifen, vorn weniger hinten",
    ),
    (
        "step.unit_volume",
        "Volumen einer Antriebseinheit: Motor, Umrichter, Getriebe mit Differenzial",
    ),
    ("step.unit_width", "Breite des äußeren Kastens der Einheit"),
    (
        "step.wear_calibrated",
        "Beiwert, der auf einem Kilometer die gemessene Masse abreibt",
    ),
    ("step.wear_car", "Masse des mittleren Autos der Messungen"),
    (
        "step.wear_drag",
        "Kraft, die der Schlupf im gewöhnlichen Fahrbetrieb kostet",
    ),
    ("step.wear_given", "Abriebbeiwert wie angegeben"),
    ("step.weight", "Gewichtskraft"),
    (
        "step.wheel_half_diagonal",
        "halbe Diagonale des Rades, von oben gesehen",
    ),
    ("step.yaw_gain", "Gierrate je Lenkwinkel"),
    (
        "step.yaw_gained",
        "Gewinn an Giermoment gegenüber der besten verglichenen Anordnung mit weniger Motoren",
    ),
    (
        "step.yaw_of_layout",
        "größtes Giermoment, das die Motoren in der Kurve des Themas „Kurvenfahrt“ hinzufügen",
    ),
    (
        "step.yaw_pair",
        "Giermoment: Ein Rad eines Paares schiebt, das andere zieht, jedes mit seinem Motor oder seinem Kraftschluss, je nachdem, was kleiner ist",
    ),
    ("surface.asphalt_dry", "trockener Asphalt oder Beton"),
    ("surface.asphalt_wet", "nasser Asphalt"),
    ("surface.concrete_wet", "nasser Beton"),
    ("surface.earth_dry", "trockener Erdweg"),
    ("surface.earth_wet", "nasser Erdweg"),
    ("surface.gravel", "Schotter"),
    ("surface.ice", "Eis"),
    ("surface.short.asphalt_dry", "Asphalt trocken"),
    ("surface.short.asphalt_wet", "Asphalt, nass"),
    ("surface.short.concrete_wet", "Beton, nass"),
    ("surface.short.earth_dry", "Erde, trocken"),
    ("surface.short.earth_wet", "Erde, nass"),
    ("surface.short.gravel", "Schotter"),
    ("surface.short.ice", "Eis"),
    ("surface.short.snow", "Schnee"),
    ("surface.snow", "festgefahrener Schnee"),
    (
        "talk.allowed.choices",
        "mindestens zwei Werte und ebenso viele Wörter",
    ),
    ("talk.allowed.list", "eine Liste von Texten"),
    (
        "talk.allowed.question",
        "eines von value, largest und smallest",
    ),
    (
        "talk.allowed.steps",
        "1 bis 500 Schritte, jeder eine Tabelle [[steps]]",
    ),
    ("talk.allowed.table", "eine Tabelle"),
    ("talk.allowed.text", "ein Text"),
    ("talk.form", "{0}: „{1}“ lässt sich nicht sagen: {2}."),
    (
        "talk.gone",
        "Mit diesen Eingaben gibt es keinen Wert für diesen Satz.",
    ),
    ("talk.in_head", "Kopf des Vortrags: {0}"),
    ("talk.in_step", "Schritt {0}: {1}"),
    ("talk.ui.add", "Hinzufügen"),
    ("talk.ui.answer", "Antwort: {0}."),
    ("talk.ui.back", "Zurück"),
    ("talk.ui.camera", "Vor der Kamera"),
    ("talk.ui.clean", "Nur das Bild"),
    ("talk.ui.clear", "Löschen"),
    ("talk.ui.clear_paper", "Durchsichtig"),
    ("talk.ui.colour", "Farbe des Stifts"),
    ("talk.ui.dark", "Dunkel"),
    ("talk.ui.forward", "Weiter"),
    ("talk.ui.ink", "Zeichnen"),
    ("talk.ui.ink_front", "blau"),
    ("talk.ui.ink_inertia", "violett"),
    ("talk.ui.ink_ink", "Tinte"),
    ("talk.ui.ink_rear", "rot"),
    ("talk.ui.ink_tractive", "grün"),
    ("talk.ui.keys", "Tasten"),
    (
        "talk.ui.keys_list",
        "→, Bild ab, Leertaste: weiter; ←, Bild auf: zurück; Pos 1, Ende: erster und letzter Schritt; W: was wäre, wenn; R: zurück zum Vortrag; P: Stift; E: Radierer; U: rückgängig; N: Notiz; C: nur das Bild; F: Vollbild",
    ),
    ("talk.ui.large", "Große Schrift"),
    ("talk.ui.last", "Das ist der letzte Schritt."),
    ("talk.ui.next", "Danach"),
    ("talk.ui.no_note", "Keine Notiz."),
    ("talk.ui.note", "Notiz"),
    ("talk.ui.notes_open", "Notiz"),
    ("talk.ui.one_more", "Noch eine Stimme für {0}"),
    ("talk.ui.pen", "Stift"),
    ("talk.ui.predicted", "Vorhergesagt: {0}."),
    ("talk.ui.prediction", "Ihre Vorhersage"),
    ("talk.ui.presenter", "Fenster für Vortragende"),
    ("talk.ui.print", "Handzettel drucken"),
    (
        "talk.ui.refused",
        "Dieser Vortrag kann nicht gezeigt werden. {0}",
    ),
    ("talk.ui.restore", "Zurück zum Vortrag"),
    ("talk.ui.rubber", "Radierer"),
    ("talk.ui.save", "Bild sichern"),
    ("talk.ui.screen", "Vollbild"),
    ("talk.ui.show_answer", "Antwort zeigen"),
    (
        "talk.ui.source",
        "Ein Vortrag ist eine TOML- oder JSON-Datei von höchstens 1 MB. {0}",
    ),
    ("talk.ui.speaker", "Vortragende"),
    ("talk.ui.step", "Schritt {0} von {1}"),
    ("talk.ui.steps", "Schritte"),
    (
        "talk.ui.stopped",
        "Dieser Schritt lässt sich nicht zeigen; das letzte Bild bleibt stehen.",
    ),
    ("talk.ui.take", "Mitnehmen"),
    ("talk.ui.tall", "9 : 16"),
    ("talk.ui.time", "Zeit seit dem Beginn"),
    ("talk.ui.tools", "Werkzeuge"),
    ("talk.ui.transcript", "Der Vortrag als Text"),
    ("talk.ui.undo", "Rückgängig"),
    ("talk.ui.what", "Was wäre, wenn?"),
    ("talk.ui.wide", "16 : 9"),
    ("talk.value", "{0}: „{1}“ ist kein Wert dieses Schritts."),
    (
        "talk.value_near",
        "{0}: „{1}“ ist kein Wert dieses Schritts; am nächsten kommt „{2}“.",
    ),
    (
        "talk.whose",
        "Alle Fahrzeuge mit Namen sind erfunden. Die Bilder werden während des Vortrags berechnet.",
    ),
    (
        "talk.why.brace",
        "eine Klammer ist allein geöffnet oder geschlossen; eine gemeinte wird doppelt geschrieben",
    ),
    ("talk.why.digits", "1 bis 9 Stellen sind möglich"),
    ("talk.why.name", "der Name fehlt"),
    ("talk.why.unit", "der Wert hat diese Einheit nicht"),
    ("topic.choice", "Welche Anordnung für diese Vorgabe"),
    ("topic.cornering", "Kurvenfahrt"),
    ("topic.idle_drag", "Was ein mitlaufender Motor kostet"),
    ("topic.launch", "Start aus dem Stand"),
    ("topic.load_transfer", "Achslastverlagerung"),
    ("topic.motor_split", "Wie viele Motoren"),
    ("topic.packaging", "Die Motoren unterbringen"),
    ("topic.traction", "Traktionsgrenzen"),
    ("topic.turn_in_place", "Wenden auf der Stelle"),
    ("ui.as_csv", "CSV"),
    ("ui.as_json", "JSON"),
    ("ui.as_png_1", "PNG 1×"),
    ("ui.as_png_2", "PNG 2×"),
    ("ui.as_png_3", "PNG 3×"),
    ("ui.as_png_4", "PNG 4×"),
    ("ui.as_svg", "SVG"),
    ("ui.as_toml", "Szenariodatei"),
    ("ui.chart_read", "Das Diagramm ablesen: {0}"),
    (
        "ui.chart_set",
        "Ein Klick oder die Eingabetaste setzt {0} auf diesen Wert.",
    ),
    ("ui.copy", "Kopieren"),
    ("ui.copy_element", "Zeile zum Einbetten"),
    ("ui.copy_frame", "Rahmen zum Einbetten"),
    ("ui.copy_latex", "Als LaTeX kopieren"),
    ("ui.copy_link", "Link zu diesem Zustand"),
    ("ui.copy_module", "Modul zum Einbetten"),
    ("ui.copy_text", "Als Text kopieren"),
    ("ui.data", "Zahlen dieses Diagramms"),
    ("ui.grips", "Griffe im Bild"),
    ("ui.motors.front", "Motoren an der Vorderachse"),
    ("ui.motors.none", "kein Motor"),
    ("ui.motors.one", "1 Motor"),
    ("ui.motors.rear", "Motoren an der Hinterachse"),
    ("ui.motors.two", "2 Motoren"),
    ("ui.no", "nein"),
    ("ui.own_tyres", "trockener Asphalt, eigene Reifen"),
    ("ui.own_vehicle", "Ihr Fahrzeug"),
    ("ui.pause", "Anhalten"),
    ("ui.pin", "Diesen Zustand festhalten"),
    ("ui.pinned", "Festgehalten: {0}."),
    ("ui.pinned_part", "{0} {1}, jetzt {2}"),
    (
        "ui.pinned_same",
        "Festgehalten: der Zustand, der zu sehen ist.",
    ),
    ("ui.pinned_value", "(festgehalten {0})"),
    ("ui.play", "Abspielen"),
    ("ui.print", "Drucken"),
    ("ui.quantity", "Größe"),
    ("ui.redo", "Wiederholen"),
    ("ui.reset", "{0} zurücksetzen"),
    ("ui.reset_all", "Alles zurücksetzen"),
    ("ui.save_chart", "Diagramm speichern"),
    ("ui.save_figure", "Bild speichern"),
    ("ui.save_numbers", "Zahlen speichern"),
    ("ui.screen", "Vollbild"),
    ("ui.share", "Speichern und teilen"),
    ("ui.stale", "Zu sehen ist das letzte gültige Ergebnis."),
    ("ui.step_back", "Ein Schritt zurück, 0,05 s"),
    ("ui.step_forward", "Ein Schritt vor, 0,05 s"),
    ("ui.undo", "Rückgängig"),
    ("ui.unpin", "Nicht mehr festhalten"),
    ("ui.value", "Wert"),
    ("ui.view", "Ansicht"),
    ("ui.view.bars", "Vergleich"),
    ("ui.view.chart", "Diagramm"),
    ("ui.view.choice.bars", "Empfindlichkeit"),
    ("ui.view.choice.plan", "Anordnung"),
    ("ui.view.plan", "Draufsicht"),
    ("ui.view.side", "Seitenansicht"),
    ("ui.view.traction.plan", "Vergleich"),
    ("ui.view.turn_in_place.bars", "Fahrbahnen"),
    ("ui.view.turn_in_place.plan", "von oben"),
    ("ui.working", "Rechenweg"),
    ("ui.yes", "ja"),
    ("vehicle.corrie", "Corrie, ein flacher Sportwagen"),
    ("vehicle.esker", "Esker, eine Familienlimousine"),
    ("vehicle.kame", "Kame, ein kleiner Stadtwagen"),
    ("vehicle.moraine", "Moraine, ein schweres Nutzfahrzeug"),
    ("vehicle.name.corrie", "Corrie"),
    ("vehicle.name.esker", "Esker"),
    ("vehicle.name.kame", "Kame"),
    ("vehicle.name.moraine", "Moraine"),
    ("vehicle.own", "Ihr Fahrzeug"),
    (
        "why.air_lifts",
        "die Luft trägt eine Achse, bevor die Reifen schieben können",
    ),
    ("why.axle_lifts", "eine Achse würde den Boden verlassen"),
    ("why.no_distance", "im Stand wird keine Strecke gefahren"),
    ("why.no_questions", "dieses Thema hat noch keine Fragen"),
    (
        "why.no_trace",
        "es ist noch keine Datei eines Zyklus angegeben",
    ),
    (
        "why.no_turn",
        "bei diesen Raddrehzahlen halten die Räder einander fest, und das Auto dreht sich nicht",
    ),
    (
        "why.question_unclear",
        "mit diesem Szenario hat die Frage keine eindeutige Antwort",
    ),
    (
        "why.sides_too_different",
        "die Seiten greifen so verschieden, dass das Auto davonfährt, statt sich zu drehen",
    ),
    (
        "why.slope_slides",
        "an einem Hang, der so steil ist wie die Reibung, rutscht das Auto weg, was immer seine Räder tun",
    ),
    (
        "why.slope_turns",
        "am Hang ist eine Kurvenfahrt nicht stationär: Der Hang zieht ständig von einer anderen Seite",
    ),
    ("why.trace_cells", "eine Zeile hat zwei Zellen"),
    ("why.trace_fast", "die Geschwindigkeit ist über 540 km/h"),
    (
        "why.trace_gap",
        "hier oder davor fehlen Zeilen: Die Schritte bis zu dieser unterscheiden sich um mehr als das 1,5-Fache",
    ),
    (
        "why.trace_jump",
        "die Geschwindigkeit ändert sich um mehr als 30 m/s in einer Sekunde",
    ),
    (
        "why.trace_long",
        "der Zyklus ist zu lang: höchstens 43 200 Zeilen und 600 kB",
    ),
    ("why.trace_negative", "die Geschwindigkeit ist unter 0"),
    ("why.trace_number", "das sind nicht zwei Zahlen"),
    (
        "why.trace_short",
        "es sind weniger als zwei Zeilen, oder nichts bewegt sich",
    ),
    ("why.trace_time", "die Zeit steigt nicht"),
];
