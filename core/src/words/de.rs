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
    ("allowed.no_question", "keine Frage"),
    (
        "allowed.other_question",
        "eine andere Frage oder andere Werte des Szenarios",
    ),
    (
        "allowed.ratio",
        "eine Zahl wie 0,5 oder ein Prozentsatz wie 50 %",
    ),
    (
        "allowed.seed",
        "der Name einer Frage, dann eine ganze Zahl als Startwert",
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
    ("dimension.acceleration", "Beschleunigung"),
    ("dimension.angle", "Winkel"),
    ("dimension.area", "Fläche"),
    ("dimension.density", "Dichte"),
    ("dimension.energy", "Energie"),
    ("dimension.force", "Kraft"),
    ("dimension.frequency", "Frequenz"),
    ("dimension.inertia", "Trägheitsmoment"),
    ("dimension.length", "Länge"),
    ("dimension.mass", "Masse"),
    ("dimension.power", "Leistung"),
    ("dimension.ratio", "reine Zahlen"),
    ("dimension.rotation", "Drehzahl"),
    ("dimension.slope", "Steigung"),
    ("dimension.speed", "Geschwindigkeit"),
    ("dimension.time", "Zeit"),
    ("dimension.torque", "Drehmoment"),
    ("figure.axis.acceleration", "Beschleunigung"),
    ("figure.axis.axle_load", "Achslast"),
    ("figure.axis.friction", "Haftbeiwert"),
    ("figure.axis.front_share", "Anteil vorn"),
    ("figure.axis.limit", "Traktionsgrenze"),
    ("figure.axis.sliding_friction", "Gleitbeiwert"),
    ("figure.axis.speed", "Geschwindigkeit"),
    ("figure.axis.time", "Zeit"),
    ("figure.axis.wheel_torque", "größtes Radmoment"),
    ("figure.braking", "Bremskraft"),
    ("figure.caution", "Vorsicht"),
    ("figure.cg_height", "Schwerpunkthöhe {0}"),
    ("figure.drag", "Luftwiderstand"),
    ("figure.front_load", "Vorderachslast, {0}"),
    ("figure.grade", "Steigung {0}"),
    ("figure.inertia", "m·a"),
    ("figure.invented", "Erfundenes Fahrzeug „{0}“."),
    (
        "figure.launch.all_grip",
        "Die Reifen aller angetriebenen Achsen begrenzen",
    ),
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
    ("figure.launch.power", "Die Leistung der Motoren begrenzt"),
    ("figure.launch.rear_grip", "Die Hinterreifen begrenzen"),
    ("figure.launch.title", "{0} nach {1}: {2}, {3} vom Start"),
    ("figure.launch.torque", "Das Moment der Motoren begrenzt"),
    ("figure.line.available", "ein Motor hat"),
    ("figure.line.front", "Vorderachse"),
    ("figure.line.needed", "nötig"),
    ("figure.line.rear", "Hinterachse"),
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
        "Bei gleichbleibender Geschwindigkeit trägt die Hinterachse das {1}-Fache der Vorderachse",
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
        "figure.turn_in_place.note_drives",
        "das Höchste, was das angetriebene Paar aufbringt",
    ),
    (
        "figure.turn_in_place.note_energy",
        "in Reifen und Boden für eine volle Drehung",
    ),
    (
        "figure.turn_in_place.note_holds",
        "mit dem die andere Achse widersteht",
    ),
    (
        "figure.turn_in_place.note_share",
        "davon schieben längs des Rades",
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
        "figure.turn_in_place.title",
        "Wenden auf der Stelle: Jede Aufstandsfläche gleitet",
    ),
    (
        "figure.turn_in_place.title_cannot",
        "{0} kann nicht auf der Stelle wenden",
    ),
    ("figure.weight", "Gewichtskraft"),
    ("figure.wheelbase", "Radstand {0}"),
    (
        "help.air.density",
        "Dichte der Luft. Auf Meereshöhe bei 15 °C: 1,225 kg/m³.",
    ),
    (
        "help.launch.model",
        "Voll: Reifen haben Schlupf, die Last verlagert sich so schnell, wie die Federn es zulassen. Ideal: Reifen greifen sofort und die Last verlagert sich sofort, wie in den ersten Rechnungen auf Papier.",
    ),
    (
        "help.launch.slip_target",
        "Schlupf, den die Traktionsregelung hält. Ohne Angabe: der Schlupf bei größtem Kraftschluss.",
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
        "help.vehicle.anti_lift_front",
        "Anteil der vorderen Laständerung, den die Lenker der Aufhängung statt der Federn tragen.",
    ),
    (
        "help.vehicle.anti_squat_rear",
        "Anteil der hinteren Laständerung, den die Lenker der Aufhängung statt der Federn tragen.",
    ),
    (
        "help.vehicle.base",
        "Ein erfundenes Beispielfahrzeug. Jedes andere Fahrzeugfeld ändert einen seiner Werte.",
    ),
    (
        "help.vehicle.battery_power",
        "Größte Leistung, die die Batterie allen Motoren zusammen gibt. Ohne Angabe: so viel, wie sie verlangen.",
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
        "help.vehicle.damping_ratio",
        "Dämpfung des Aufbaus auf seinen Federn, als Anteil der kritischen Dämpfung.",
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
        "help.vehicle.final_drive_ratio",
        "Übersetzung zwischen Antriebswelle und Starrachse.",
    ),
    (
        "help.vehicle.gear_efficiency",
        "Anteil der Motorleistung, den das Getriebe weitergibt.",
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
        "help.vehicle.mass",
        "Masse des Fahrzeugs mit seiner Ladung.",
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
        "help.vehicle.wheel_inertia",
        "Trägheitsmoment eines Rades mit Reifen um seine Achse.",
    ),
    ("help.vehicle.wheel_radius", "Rollradius der Räder."),
    ("help.vehicle.wheelbase", "Abstand zwischen den Achsen."),
    ("input.air.density", "Luftdichte"),
    ("input.launch.model", "Modell"),
    ("input.launch.slip_target", "Zielschlupf"),
    ("input.launch.time", "gezeigter Zeitpunkt"),
    ("input.launch.traction_control", "Traktionsregelung"),
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
    ("input.surface.friction_peak", "Haftbeiwert"),
    ("input.surface.friction_peak_left", "Haftbeiwert links"),
    ("input.surface.friction_peak_right", "Haftbeiwert rechts"),
    ("input.surface.friction_sliding", "Gleitbeiwert"),
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
    ("input.vehicle.anti_lift_front", "Anfahr-Nickausgleich vorn"),
    (
        "input.vehicle.anti_squat_rear",
        "Anfahr-Nickausgleich hinten",
    ),
    ("input.vehicle.base", "Fahrzeug"),
    ("input.vehicle.battery_power", "Batterieleistung"),
    ("input.vehicle.body", "Karosserieumriss"),
    ("input.vehicle.cg_height", "Schwerpunkthöhe"),
    ("input.vehicle.cg_to_front_axle", "Schwerpunktabstand vorn"),
    ("input.vehicle.damping_ratio", "Dämpfungsgrad"),
    ("input.vehicle.drag_area", "Luftwiderstandsfläche"),
    (
        "input.vehicle.drag_height",
        "Angriffshöhe des Luftwiderstands",
    ),
    ("input.vehicle.final_drive_ratio", "Achsübersetzung"),
    ("input.vehicle.gear_efficiency", "Getriebewirkungsgrad"),
    ("input.vehicle.lift_area_front", "Auftriebsfläche vorn"),
    ("input.vehicle.lift_area_rear", "Auftriebsfläche hinten"),
    ("input.vehicle.mass", "Masse"),
    (
        "input.vehicle.motor_decline_speed",
        "zweite Eckdrehzahl des Motors",
    ),
    ("input.vehicle.motor_max_speed", "Höchstdrehzahl des Motors"),
    ("input.vehicle.motor_power", "Motorleistung"),
    ("input.vehicle.motor_ratio", "Motorübersetzung"),
    ("input.vehicle.motor_torque", "Motormoment"),
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
    ("input.vehicle.tyre_reference_load", "Bezugsradlast"),
    ("input.vehicle.tyre_relaxation_length", "Einlauflänge"),
    ("input.vehicle.tyre_width_front", "Reifenbreite vorn"),
    ("input.vehicle.tyre_width_rear", "Reifenbreite hinten"),
    ("input.vehicle.wheel_inertia", "Radträgheit"),
    ("input.vehicle.wheel_radius", "Radhalbmesser"),
    ("input.vehicle.wheelbase", "Radstand"),
    ("option.as_fitted", "wie verbaut"),
    ("option.full", "volles Modell"),
    ("option.ideal", "idealer Kraftschluss"),
    ("option.independent", "Einzelradaufhängung"),
    ("option.locked", "gesperrt"),
    ("option.off", "aus"),
    ("option.on", "ein"),
    ("option.open", "offen"),
    ("option.open_with_brakes", "offen, mit Bremseingriff"),
    ("option.saloon", "Limousine"),
    ("option.small_car", "Kleinwagen"),
    ("option.solid", "Starrachse"),
    ("option.sports_car", "Sportwagen"),
    ("option.unlimited", "unbegrenzt"),
    ("option.utility", "Nutzfahrzeug"),
    (
        "output.launch.end_speed",
        "Geschwindigkeit am Ende der Fahrt",
    ),
    (
        "output.launch.front_grip_limited_until",
        "Vorderreifen begrenzen bis",
    ),
    ("output.launch.front_peak_slip", "größter Schlupf vorn"),
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
    (
        "output.launch.rollout_time",
        "Zeit für den ersten Fuß (Rollout)",
    ),
    ("output.launch.time_to_100_km_h", "Zeit bis 100 km/h"),
    ("output.launch.time_to_160_km_h", "Zeit bis 160 km/h"),
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
        "output.turn_in_place.driving_moment",
        "Moment des angetriebenen Paares",
    ),
    (
        "output.turn_in_place.energy_per_turn",
        "Energie für eine volle Drehung",
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
        "output.turn_in_place.front_tractive_force_per_wheel",
        "Antriebskraft, ein Vorderrad",
    ),
    (
        "output.turn_in_place.front_wheel_torque",
        "Moment, ein Vorderrad",
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
        "output.turn_in_place.tractive_force_per_wheel",
        "Antriebskraft je Rad, im Mittel",
    ),
    (
        "output.turn_in_place.turning_centre_behind_front_axle",
        "Drehpunkt hinter der Vorderachse",
    ),
    (
        "output.turn_in_place.wheel_speed_ratio",
        "Radgeschwindigkeit durch Giergeschwindigkeit",
    ),
    (
        "output.turn_in_place.wheel_torque",
        "Moment je Rad, im Mittel",
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
    (
        "problem.missing",
        "{0} fehlt: Geben Sie es an ({1}), oder nennen Sie mit vehicle.base ein Beispielfahrzeug.",
    ),
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
        "question.change",
        "Angenommen, nur eines ändert sich: {0}, von {1} auf {2}. Was wird aus diesem Wert? {3}",
    ),
    ("question.changed", "Der Wert geht von {0} auf {1}."),
    ("question.close", "weniger als 1\u{2009}% daneben"),
    ("question.commit", "Vorhersage festlegen"),
    ("question.far", "viel zu viel oder viel zu wenig"),
    ("question.field", "Ihre Vorhersage: {0}"),
    ("question.front_axle", "die Vorderachse"),
    ("question.given", "Gegeben"),
    ("question.hint", "Hinweis"),
    (
        "question.inside",
        "Das liegt innerhalb der Toleranz von {0}.",
    ),
    (
        "question.later",
        "Bild, Zahlen und Rechenweg erscheinen nach Ihrer Vorhersage.",
    ),
    ("question.less", "er wird kleiner"),
    (
        "question.load_transfer.change.hint",
        "Suchen Sie den geänderten Wert unter den Formelzeichen der Lastgleichung.",
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
        "question.load_transfer.rear_load",
        "Das Auto beschleunigt mit {0}. Wie groß ist seine Hinterachslast?",
    ),
    (
        "question.load_transfer.rear_load.hint",
        "Die Trägheitskraft greift in Schwerpunkthöhe an. Ihrem Moment müssen Achslasten das Gleichgewicht halten, die einen Radstand auseinanderliegen.",
    ),
    ("question.more", "er wird größer"),
    (
        "question.outside",
        "Das liegt außerhalb der Toleranz von {0}.",
    ),
    ("question.rear_axle", "die Hinterachse"),
    ("question.same", "er bleibt gleich"),
    (
        "question.tolerance",
        "Richtig ist ein Wert, der höchstens {0} von der Antwort abweicht.",
    ),
    (
        "question.tolerance_find",
        "Richtig ist ein Wert, dessen Ergebnis höchstens {0} vom Gefragten abweicht.",
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
        "question.traction.what_limits",
        "Anordnung F1R1 mit fester Aufteilung: Die Vorderachse bringt {0} der Antriebskraft auf. Was begrenzt die Beschleunigung?",
    ),
    (
        "question.traction.what_limits.hint",
        "Vergleichen Sie den Kraftanteil vorn mit dem Lastanteil vorn an der Grenze, nicht im Stand.",
    ),
    (
        "question.turn_in_place.change.hint",
        "Schreiben Sie den Wert als Produkt: Reibung, Last, ein Anteil, der an der Form des Autos hängt, ein Hebelarm. Was davon ändert sich?",
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
        "question.turn_in_place.wheel_torque",
        "Das Auto wendet auf der Stelle, alle vier Räder sind angetrieben. Wie groß ist das mittlere Moment an einem Rad?",
    ),
    (
        "question.turn_in_place.wheel_torque.hint",
        "Jede Aufstandsfläche nutzt all ihre Reibung, aber nur der Teil, der längs des Rades zeigt, braucht Moment.",
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
        "reason.front_and_rear_slip",
        "vorn und hinten rutschen die Reifen",
    ),
    ("reason.front_lift", "die Vorderachse hebt ab"),
    ("reason.front_slip", "die Vorderreifen rutschen"),
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
        "reason.pair_holds_itself",
        "Das angetriebene Paar muss auch die eigene Achse gegen die Seitenkraft halten; was von seiner Reibung übrig bleibt, dreht das Auto nicht auf der Stelle.",
    ),
    ("reason.rear_slip", "die Hinterreifen rutschen"),
    (
        "reason.undriven_axle_holds",
        "Das angetriebene Paar kann die andere Achse nicht quer ziehen; mit durchdrehenden Rädern schwenkt das Auto nur um jene Achse.",
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
    ("site.beside", "Vorige und nächste Seite"),
    ("site.check_case", "Veröffentlichter Fall"),
    ("site.check_here", "Hier"),
    ("site.check_published", "Veröffentlicht"),
    ("site.check_source", "Quelle"),
    (
        "site.disclaimer",
        "Für Unterricht und frühen Vergleich. Ersetzt keine zugelassene Ingenieurleistung; örtliches Recht und die Anweisungen des Fahrzeugherstellers gehen vor.",
    ),
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
    (
        "site.licence",
        "Frei verwendbar unter der MIT- oder der Apache-2.0-Lizenz.",
    ),
    (
        "site.no_script",
        "Dieses Element braucht Skript, das hier abgeschaltet ist.",
    ),
    ("site.pages", "Seiten"),
    ("site.skip", "Zum Inhalt"),
    ("site.surface", "Fahrbahn"),
    ("site.surface_known", "Woher wir es wissen"),
    ("site.surface_memory", "aus dem Gedächtnis"),
    ("site.surface_peak", "Haftbeiwert"),
    ("site.surface_quoted", "in einem anderen Text zitiert"),
    ("site.surface_sliding", "Gleitbeiwert"),
    (
        "source.launch",
        "Bewegungsgleichung m·a = F_f + F_r − Widerstand, aus dem Stand integriert (Dormand und Prince, Ordnung 5)",
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
        "starter.intro",
        "Eine Zeile, die mit # beginnt, ist ein Kommentar; entfernen Sie das #, um das Feld zu setzen.",
    ),
    (
        "step.after_rollout",
        "die Uhr läuft erst nach dem ersten Fuß",
    ),
    ("step.available", "Moment, das ein Motor seinem Rad gibt"),
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
    ("step.drag", "Luftwiderstand"),
    ("step.drive_cost", "Kosten aller Antriebseinheiten"),
    ("step.drive_mass", "Masse aller Antriebseinheiten"),
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
        "step.force",
        "Antriebskraft, die diese Beschleunigung braucht",
    ),
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
    ("step.front_share", "Anteil der Vorderachse an der Last"),
    (
        "step.front_unaccelerated",
        "Vorderachslast bei gleichbleibender Geschwindigkeit",
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
    ("step.heave", "Hub des Schwerpunkts"),
    (
        "step.ideal_share",
        "idealer Kraftanteil vorn im Stand: der Lastanteil vorn",
    ),
    (
        "step.lateral_scrub",
        "Moment, wenn jede Aufstandsfläche genau quer radierte",
    ),
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
        "step.limit_lift",
        "Grenze: Die Vorderachse verlässt den Boden",
    ),
    (
        "step.limit_rear",
        "Grenze des Hinterradantriebs: Die treibende Achse gewinnt Last",
    ),
    (
        "step.matching",
        "Beschleunigung, bei der der Lastanteil vorn gleich dem Momentanteil ist",
    ),
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
    ("step.motors", "Motoren: vorn und hinten"),
    (
        "step.other_holds",
        "Moment, mit dem die andere Achse dem Ziehen zur Seite widersteht",
    ),
    (
        "step.pair_drives",
        "das Höchste, was das angetriebene Paar um die eigene Achse aufbringt",
    ),
    (
        "step.parts",
        "Teile: Motor, Wechselrichter und Getriebe je Motor, zwei Seitenwellen je angetriebener Achse, ein Differenzial, wo ein Motor zwei Räder treibt",
    ),
    (
        "step.peak_slip",
        "größter Schlupf dieser Achse: aus der Fahrt abgelesen",
    ),
    ("step.pitch", "Nickwinkel, Bug nach unten positiv"),
    (
        "step.power_needed",
        "Leistung des Motors, der an der Grenze bei dieser Geschwindigkeit am stärksten schiebt, aus der Kraft, die er dort geben muss",
    ),
    ("step.ratio", "Last hinten durch Last vorn"),
    ("step.rear_force", "Antriebskraft der Hinterachse"),
    ("step.rear_load", "Hinterachslast"),
    (
        "step.rear_unaccelerated",
        "Hinterachslast bei gleichbleibender Geschwindigkeit",
    ),
    ("step.rear_use", "Kraftschlussausnutzung der Hinterachse"),
    ("step.resisting", "Moment der Seitenkräfte um den Drehpunkt"),
    ("step.rise_front", "Anheben über der Vorderachse"),
    ("step.same_force", "an jedem Rad gleich"),
    (
        "step.shift",
        "Last, die das Antriebsmoment einer Starrachse von einem Rad auf das andere verlagert, im Verhältnis zur Kraft",
    ),
    (
        "step.slide_front",
        "Gleitgeschwindigkeit einer vorderen Aufstandsfläche durch Giergeschwindigkeit",
    ),
    (
        "step.slide_rear",
        "Gleitgeschwindigkeit einer hinteren Aufstandsfläche durch Giergeschwindigkeit",
    ),
    ("step.slope_angle", "Neigungswinkel aus der Steigung"),
    (
        "step.speed_ratio",
        "Radgeschwindigkeit durch Giergeschwindigkeit: Was die Räder hineingeben, nimmt das Gleiten heraus",
    ),
    (
        "step.speed_ratio_even",
        "Radgeschwindigkeit durch Giergeschwindigkeit: Die Momente sind im Gleichgewicht",
    ),
    (
        "step.speed_ratio_rolls",
        "Radgeschwindigkeit durch Giergeschwindigkeit: Die rollenden Räder legen sie fest",
    ),
    ("step.static_front", "Vorderachslast im Stand auf der Ebene"),
    ("step.static_rear", "Hinterachslast im Stand auf der Ebene"),
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
        "step.two_to_one",
        "Beschleunigung, bei der die Hinterachse das Doppelte der Vorderachse trägt",
    ),
    (
        "step.tyre_heat",
        "Wärme aus Schlupf, vorn und hinten: Kraft mal Gleitgeschwindigkeit, aufsummiert",
    ),
    ("step.weight", "Gewichtskraft"),
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
    ("surface.short.gravel", "Schotter"),
    ("surface.short.ice", "Eis"),
    ("surface.short.snow", "Schnee"),
    ("surface.snow", "festgefahrener Schnee"),
    ("topic.launch", "Start aus dem Stand"),
    ("topic.load_transfer", "Achslastverlagerung"),
    ("topic.motor_split", "Wie viele Motoren"),
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
    ("ui.view.chart", "Diagramm"),
    ("ui.view.plan", "Draufsicht"),
    ("ui.view.side", "Seitenansicht"),
    ("ui.view.traction.plan", "Vergleich"),
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
    ("why.no_questions", "dieses Thema hat noch keine Fragen"),
    (
        "why.no_turn",
        "bei diesen Raddrehzahlen halten die Räder einander fest, und das Auto dreht sich nicht",
    ),
    (
        "why.question_unclear",
        "mit diesem Szenario hat die Frage keine eindeutige Antwort",
    ),
    (
        "why.slope_slides",
        "jede Aufstandsfläche gleitet schon; am Hang hält daher nichts das Auto, und es rutscht abwärts",
    ),
];
