//! Spanish. Keys, their order and the values put in are those of English.

pub(super) const WORDS: &[(&str, &str)] = &[
    ("allowed.any", "cualquier valor"),
    ("allowed.between", "de {0} a {1}"),
    ("allowed.inside", "más de {0} y menos de {1}"),
    ("allowed.less_lift", "menos sustentación o menos pendiente"),
    (
        "allowed.less_speed",
        "una velocidad menor o menos área de sustentación",
    ),
    ("allowed.level", "0 (suelo llano)"),
    ("allowed.nearer_one", "un valor más cercano a 1"),
    (
        "allowed.nearer_other_side",
        "un valor más cercano al del otro lado",
    ),
    ("allowed.no_question", "ninguna pregunta"),
    (
        "allowed.other_question",
        "otra pregunta u otros valores del escenario",
    ),
    (
        "allowed.own_cycle",
        "un archivo del ciclo (idle_drag.trace), cuyas líneas tienen tiempo en s y velocidad en km/h; u otro ciclo",
    ),
    (
        "allowed.ratio",
        "un número como 0,5 o un porcentaje como 50 %",
    ),
    (
        "allowed.seed",
        "el nombre de una pregunta y después un número entero como semilla",
    ),
    ("allowed.some_speed", "una velocidad mayor que 0"),
    (
        "allowed.trace",
        "líneas de dos números, tiempo en s y velocidad en km/h, como 0;0 y luego 1;3,5",
    ),
    (
        "caution.choice",
        "Una recomendación a partir de pocos números es un comienzo, no una decisión. Lo que estos motores pueden hacer pertenece a un terreno cerrado sin nadie cerca; la ley local y las instrucciones del fabricante van primero. Para enseñar y comparar al principio; no sustituye el trabajo de ingenieros habilitados.",
    ),
    (
        "caution.cornering",
        "Los virajes al límite se hacen en un recinto cerrado y sin espectadores: un coche derrapa o gira sobre sí sin avisar. Prevalecen la ley local y las instrucciones del fabricante del vehículo. Para la enseñanza y una primera comparación; no sustituye el trabajo de un ingeniero habilitado.",
    ),
    (
        "caution.idle_drag",
        "Las pérdidas y autonomías se calculan con coeficientes inventados, no medidos. Las clases de eficiencia IE1 a IE4 son para motores conectados a la red y nada dicen de un motor de tracción. Para la enseñanza y la comparación temprana; no sustituye la práctica profesional de ingeniería.",
    ),
    (
        "caution.launch",
        "Las arrancadas fuertes se hacen en un recinto cerrado y sin espectadores: un coche puede salirse de su trayectoria de golpe. Prevalecen la ley local y las instrucciones del fabricante del vehículo. Para la enseñanza y una primera comparación; no sustituye el trabajo de un ingeniero habilitado.",
    ),
    (
        "caution.load_transfer",
        "Las aceleraciones fuertes se hacen en un recinto cerrado y sin espectadores. Prevalecen la ley local y las instrucciones del fabricante del vehículo. Para la enseñanza y una primera comparación; no sustituye el trabajo de un ingeniero habilitado.",
    ),
    (
        "caution.motor_split",
        "Lo que pueden hacer estos motores se prueba en un recinto cerrado y sin espectadores. Prevalecen la ley local y las instrucciones del fabricante del vehículo. Para la enseñanza y una primera comparación; no sustituye el trabajo de un ingeniero habilitado.",
    ),
    (
        "caution.packaging",
        "El espacio en una vista en planta no es un diseño: la estructura de choque, la refrigeración, los cables y el acceso de mantenimiento también necesitan espacio. Para enseñar y comparar al principio; no sustituye el trabajo de ingenieros habilitados.",
    ),
    (
        "caution.traction",
        "En el límite de tracción, un coche puede salirse de su trayectoria. Solo en un recinto cerrado y sin espectadores. Prevalecen la ley local y las instrucciones del fabricante del vehículo. Para la enseñanza y una primera comparación; no sustituye el trabajo de un ingeniero habilitado.",
    ),
    (
        "caution.turn_in_place",
        "Solo en un recinto cerrado y llano, sin espectadores. Destroza los neumáticos y el suelo, y en pendiente el vehículo se desliza. Prevalecen la ley local y las instrucciones del fabricante del vehículo. Para la enseñanza y una primera comparación; no sustituye el trabajo de un ingeniero habilitado.",
    ),
    ("check.derived", "deducido"),
    ("check.memory", "de memoria"),
    ("check.practice", "práctica habitual, sin fuente"),
    ("check.quoted", "citado"),
    ("check.read", "leído"),
    (
        "choice.because_best",
        "{0} cumple el encargo con la puntuación más alta, {1}, a un coste de {2} y con {3} hasta 60 mph. Le sigue {4} con {5}; lo que más cuenta es {6}.",
    ),
    (
        "choice.because_cannot_start",
        "{0}: {1} tendría más puntuación, pero en la pendiente de {2} le faltan {3} a sus neumáticos y motores. A {0} le sobran {4}.",
    ),
    (
        "choice.because_fit",
        "{0}: {1} tendría más puntuación, pero a sus unidades les faltan {2} de espacio. A las de {0} les sobran {3}.",
    ),
    (
        "choice.because_none",
        "Ninguna disposición cumple el encargo. {0} sería la mejor sin sus exigencias: {1}.",
    ),
    (
        "choice.because_only",
        "{0} es la única disposición que cumple el encargo, a un coste de {2} y con {3} hasta 60 mph.",
    ),
    (
        "choice.because_other",
        "{0}: {1} tendría más puntuación, pero {2}.",
    ),
    (
        "choice.because_range",
        "{0}: {1} tendría más puntuación, pero llega a {2} y el encargo pide {3}. {0} llega a {4}.",
    ),
    (
        "choice.because_too_slow",
        "{0}: {1} tendría más puntuación, pero tarda {2} hasta 60 mph y el encargo permite {3}. {0} tarda {4}.",
    ),
    (
        "choice.because_turn",
        "{0}: {1} tendría más puntuación, pero no puede girar en el sitio, que es lo que pide el encargo. {0} puede, y cuesta {2} en vez de {3}.",
    ),
    (
        "choice.because_vector",
        "{0}: {1} tendría más puntuación, pero ningún eje suyo tiene un motor por rueda y no puede repartir el par. Los motores de {0} dan un momento de guiñada de {2}.",
    ),
    ("choice.name_cost", "el coste"),
    ("choice.name_energy", "la energía por distancia"),
    ("choice.name_room", "el espacio que queda detrás"),
    ("choice.name_time", "el tiempo hasta 60 mph"),
    ("dimension.acceleration", "aceleración"),
    (
        "dimension.acceleration_gain",
        "aceleración lateral por ángulo de dirección",
    ),
    ("dimension.angle", "ángulo"),
    ("dimension.area", "área"),
    ("dimension.cornering_stiffness", "rigidez de deriva"),
    ("dimension.density", "densidad"),
    ("dimension.distance", "distancia"),
    ("dimension.energy", "energía"),
    ("dimension.energy_per_distance", "energía por distancia"),
    ("dimension.force", "fuerza"),
    ("dimension.frequency", "frecuencia"),
    ("dimension.inertia", "momento de inercia"),
    ("dimension.length", "longitud"),
    ("dimension.mass", "masa"),
    ("dimension.power", "potencia"),
    ("dimension.power_density", "densidad de potencia"),
    ("dimension.pressure", "presión"),
    ("dimension.ratio", "números puros"),
    ("dimension.rotation", "velocidad de giro"),
    ("dimension.slope", "pendiente"),
    ("dimension.speed", "velocidad"),
    (
        "dimension.steer_gradient",
        "ángulo de dirección por aceleración lateral",
    ),
    ("dimension.stored_energy", "energía de una batería"),
    ("dimension.time", "tiempo"),
    ("dimension.torque", "par"),
    ("dimension.volume", "volumen"),
    ("dimension.wear_per_energy", "desgaste por energía"),
    ("dimension.worn_mass", "masa desgastada"),
    (
        "dimension.yaw_gain",
        "velocidad de guiñada por ángulo de dirección",
    ),
    ("dimension.yaw_rate", "velocidad de guiñada"),
    ("figure.axis.acceleration", "aceleración"),
    ("figure.axis.axle_load", "carga por eje"),
    ("figure.axis.friction", "adherencia máxima"),
    ("figure.axis.front_share", "parte delantera"),
    ("figure.axis.lateral_acceleration", "aceleración lateral"),
    ("figure.axis.limit", "límite de tracción"),
    ("figure.axis.sliding_friction", "rozamiento al deslizar"),
    ("figure.axis.speed", "velocidad"),
    ("figure.axis.steady_share", "parte del valor estacionario"),
    ("figure.axis.steer_angle", "ángulo de dirección"),
    ("figure.axis.time", "tiempo"),
    ("figure.axis.torque_needed", "par medio necesario en rueda"),
    ("figure.axis.wheel_torque", "mayor par en rueda"),
    ("figure.axis.width", "anchura"),
    ("figure.axis.yaw_moment", "momento de guiñada"),
    ("figure.axis.yaw_rate", "velocidad de guiñada"),
    ("figure.braking", "fuerza de frenado"),
    ("figure.caution", "Precaución"),
    ("figure.cg_height", "altura del CG {0}"),
    ("figure.choice.bar", "{0}: de {1} a {2}"),
    ("figure.choice.bar_told", "{0} ({1}) da {2}"),
    ("figure.choice.bars_axis", "cambio mínimo, %"),
    (
        "figure.choice.bars_none",
        "Nada cambia la recomendación, cada cosa sola y hasta {0}",
    ),
    (
        "figure.choice.bars_title",
        "Lo que cambiaría la recomendación, cada cosa sola y hasta {0}",
    ),
    (
        "figure.choice.chart_describe",
        "Coste y tiempo hasta 60 mph de cada disposición: {0}. {1}",
    ),
    (
        "figure.choice.chart_key",
        "Puntos llenos: en el frente de Pareto de todo lo que tiene peso. Entre paréntesis: no cumple el encargo. Los costes son inventados.",
    ),
    (
        "figure.choice.chart_title",
        "Lo que compra un coste: se recomienda {0}",
    ),
    (
        "figure.choice.describe",
        "{0} Vista en planta de un coche que mira a la derecha con la disposición {1}: {2}. {3}.",
    ),
    ("figure.choice.line_front", "mejor tiempo por el coste"),
    ("figure.choice.shown", "Se muestra {0}: {1}."),
    ("figure.choice.title", "Para este encargo: {0}"),
    (
        "figure.choice.title_none",
        "Ninguna disposición cumple este encargo",
    ),
    ("figure.cornering.alone", "Sin ayuda"),
    ("figure.cornering.brakes_front", "Un freno delante"),
    ("figure.cornering.brakes_rear", "Un freno detrás"),
    (
        "figure.cornering.circle",
        "Círculo: toda la fricción de un neumático; flecha y porcentaje: lo que usa.",
    ),
    (
        "figure.cornering.describe",
        "Vista en planta de un vehículo que gira a la izquierda a {0} con un radio de {1}, una vez por cada manera de hacer el mismo momento de guiñada.",
    ),
    (
        "figure.cornering.describe_alone",
        "Vista en planta de un coche que gira a la izquierda a {0} en un radio de {1}; ángulo de dirección {2}.",
    ),
    (
        "figure.cornering.describe_used",
        "Partes de su fricción que usan los neumáticos, delantero izquierdo, delantero derecho, trasero izquierdo, trasero derecho: {0}, {1}, {2}, {3}.",
    ),
    (
        "figure.cornering.describe_way",
        "{0}: {1} de la batería, ángulo de dirección {2}.",
    ),
    (
        "figure.cornering.limit_shown",
        "Se muestra el viraje más rápido en este radio.",
    ),
    ("figure.cornering.line_ackermann", "ángulo de Ackermann"),
    ("figure.cornering.line_full", "dos huellas"),
    ("figure.cornering.line_lateral", "aceleración lateral"),
    ("figure.cornering.line_single", "una huella"),
    ("figure.cornering.line_yaw", "velocidad de guiñada"),
    ("figure.cornering.mixed", "Un freno delante, motores detrás"),
    (
        "figure.cornering.moment_describe",
        "Momento de guiñada según la aceleración lateral a {0}, una línea por ángulo de dirección, a lo largo de la cual el ángulo de deriva cambia de 10° a −10°. Donde una línea cruza el cero, el viraje es estacionario.",
    ),
    (
        "figure.cornering.moment_key",
        "Cada línea: un ángulo de dirección, con el de deriva de 10° a −10°.",
    ),
    (
        "figure.cornering.moment_title",
        "A {0} y {1} de dirección, los momentos se equilibran a {2}",
    ),
    ("figure.cornering.motors_front", "Dos motores delante"),
    ("figure.cornering.motors_rear", "Dos motores detrás"),
    (
        "figure.cornering.note_brake",
        "freno en la rueda interior (bloque negro), hacia atrás",
    ),
    (
        "figure.cornering.note_force",
        "motores en las dos ruedas, una adelante y otra atrás",
    ),
    ("figure.cornering.note_heat", "calor en el freno"),
    ("figure.cornering.note_power", "de la batería"),
    (
        "figure.cornering.note_slow",
        "se pierden por segundo si nada mantiene la velocidad",
    ),
    (
        "figure.cornering.note_steer",
        "ángulo de dirección; {0} sin ayuda",
    ),
    ("figure.cornering.note_steer_alone", "ángulo de dirección"),
    (
        "figure.cornering.radius_describe",
        "Ángulo de dirección según la aceleración lateral con un radio constante de {0}. Empieza en el ángulo de Ackermann de {1} y termina en {2} con {3}.",
    ),
    (
        "figure.cornering.radius_title",
        "En un radio de {0} el coche puede virar a {1}: {2}",
    ),
    (
        "figure.cornering.step_describe",
        "Velocidad de guiñada y aceleración lateral tras un escalón de dirección, como partes de sus valores estacionarios, según el tiempo. La guiñada llega a nueve décimos {0} después de la mitad del giro y se pasa en {1}.",
    ),
    (
        "figure.cornering.step_title",
        "Tras un escalón de dirección, la guiñada necesita {0}",
    ),
    ("figure.cornering.subtitle", "{0}, radio {1}, {2}."),
    (
        "figure.cornering.title",
        "Para {0} de momento de guiñada los motores toman {1}, un freno {2}",
    ),
    (
        "figure.cornering.title_cannot",
        "Este viraje no se puede mantener: {0}",
    ),
    ("figure.cornering.title_plain", "Viraje estacionario a {0}"),
    ("figure.drag", "resistencia del aire"),
    ("figure.front_load", "carga delantera, {0}"),
    ("figure.grade", "pendiente {0}"),
    ("figure.idle_drag.axis_battery", "energía de la batería"),
    ("figure.idle_drag.axis_energy", "energía de la batería"),
    ("figure.idle_drag.axis_force", "fuerza en las ruedas"),
    ("figure.idle_drag.axis_loss", "pérdida de un motor"),
    (
        "figure.idle_drag.bars_describe",
        "Barras de la energía de cada disposición: {0}.",
    ),
    ("figure.idle_drag.bars_reason", "{0}; motores inactivos {1}"),
    ("figure.idle_drag.bars_road", "solo el avance {0}"),
    ("figure.idle_drag.bars_title", "{0} toma {1}, {2} toma {3}"),
    ("figure.idle_drag.bars_title_plain", "Energía de la batería"),
    (
        "figure.idle_drag.bars_weak",
        "Los motores son demasiado débiles para el ciclo.",
    ),
    ("figure.idle_drag.cycle_own", "Ciclo propio."),
    ("figure.idle_drag.cycle_steady", "Constante a {0}."),
    ("figure.idle_drag.cycle_wltc", "WLTC clase 3b."),
    ("figure.idle_drag.describe", "Vista en planta. {0}."),
    (
        "figure.idle_drag.energy_describe",
        "Energía de la batería a lo largo del ciclo; al frenar vuelve una parte. Al final: {0}.",
    ),
    ("figure.idle_drag.energy_title", "De la batería: {0}"),
    (
        "figure.idle_drag.legend",
        "motor en color: da par; gris: gira sin par; semieje cortado: desconectado",
    ),
    ("figure.idle_drag.line_both", "encima ambos ejes"),
    ("figure.idle_drag.line_front", "encima eje delantero"),
    ("figure.idle_drag.line_hardest", "ciclo como máximo"),
    ("figure.idle_drag.line_induction", "inducción, sin par"),
    (
        "figure.idle_drag.line_induction_drives",
        "inducción, impulsa",
    ),
    ("figure.idle_drag.line_magnet", "imanes, sin par"),
    ("figure.idle_drag.line_magnet_drives", "imanes, impulsa"),
    ("figure.idle_drag.line_most", "todos los motores"),
    ("figure.idle_drag.line_parted", "desconectado"),
    ("figure.idle_drag.line_rear", "encima eje trasero"),
    ("figure.idle_drag.line_road", "constante"),
    ("figure.idle_drag.line_speed", "velocidad"),
    (
        "figure.idle_drag.losses_describe",
        "Pérdida de un motor según la velocidad, para cada tipo: sin par, impulsando solo a velocidad constante y desconectado. A {0}: {1} con imanes, {2} de inducción, ambos sin par.",
    ),
    (
        "figure.idle_drag.losses_sub",
        "Pérdida de un motor, con coeficientes inventados.",
    ),
    (
        "figure.idle_drag.losses_title",
        "A {0} un motor de imanes sin par pierde {1}, uno de inducción {2}",
    ),
    (
        "figure.idle_drag.note_both",
        "en las ruedas: desde aquí ambos ejes pierden menos que uno",
    ),
    ("figure.idle_drag.note_force", "fuerza en las ruedas"),
    (
        "figure.idle_drag.note_front_drives",
        "pérdida delante, con un par de {0}",
    ),
    (
        "figure.idle_drag.note_front_idles",
        "pérdida delante, sin par",
    ),
    (
        "figure.idle_drag.note_front_parted",
        "pérdida delante, desconectado",
    ),
    (
        "figure.idle_drag.note_rear_drives",
        "pérdida detrás, con un par de {0}",
    ),
    (
        "figure.idle_drag.note_rear_idles",
        "pérdida detrás, sin par",
    ),
    (
        "figure.idle_drag.note_rear_parted",
        "pérdida detrás, desconectado",
    ),
    ("figure.idle_drag.phase_high", "fin de alta"),
    ("figure.idle_drag.phase_low", "fin de baja"),
    ("figure.idle_drag.phase_medium", "fin de media"),
    (
        "figure.idle_drag.speed_describe",
        "Velocidad según el tiempo: {0} en {2} s, hasta {1}.",
    ),
    (
        "figure.idle_drag.speed_title",
        "El ciclo: {0} en {2} s, hasta {1}",
    ),
    (
        "figure.idle_drag.split_describe",
        "Fuerza en las ruedas según la velocidad. {0}. Se pide ahora: {1}; los motores tienen {2}.",
    ),
    (
        "figure.idle_drag.split_sub",
        "Mejor reparto del par, para la menor pérdida.",
    ),
    (
        "figure.idle_drag.split_title",
        "{0} a {1}: ambos ejes impulsan desde {2}, por debajo uno solo",
    ),
    (
        "figure.idle_drag.split_title_always",
        "{0} a {1}: ambos ejes comparten siempre, pues un motor sin par perdería lo mismo",
    ),
    (
        "figure.idle_drag.split_title_never",
        "{0} a {1}: un eje solo es siempre mejor",
    ),
    (
        "figure.idle_drag.split_title_single",
        "{0} impulsa un eje: no hay nada que repartir",
    ),
    (
        "figure.idle_drag.title_both",
        "{0} a {1}: trabajan ambos ejes, el delantero con el {2} del par; todos los motores pierden {3}",
    ),
    (
        "figure.idle_drag.title_front",
        "{0} a {1}: trabaja solo el eje delantero; el giro en vacío detrás cuesta {2}",
    ),
    (
        "figure.idle_drag.title_none",
        "{0} a {1}: ningún motor impulsa, y girar sin par cuesta {2}",
    ),
    (
        "figure.idle_drag.title_rear",
        "{0} a {1}: trabaja solo el eje trasero; el giro en vacío delante cuesta {2}",
    ),
    (
        "figure.idle_drag.title_single",
        "{0} a {1}: el accionamiento pierde {2}",
    ),
    (
        "figure.idle_drag.title_weak",
        "{0} a {1}: los motores no tienen tanto par",
    ),
    ("figure.inertia", "m·a"),
    ("figure.invented", "Vehículo inventado «{0}»."),
    (
        "figure.launch.all_grip",
        "Limitan los neumáticos de todos los ejes motrices",
    ),
    ("figure.launch.battery", "Limita la potencia de la batería"),
    ("figure.launch.by_battery", "la potencia de la batería"),
    (
        "figure.launch.by_front_lift",
        "el despegue de las ruedas delanteras",
    ),
    ("figure.launch.by_grip", "la adherencia de los neumáticos"),
    (
        "figure.launch.by_motor_speed",
        "el régimen máximo de los motores",
    ),
    ("figure.launch.by_nothing", "nada"),
    ("figure.launch.by_power", "la potencia de los motores"),
    ("figure.launch.by_torque", "el par de los motores"),
    (
        "figure.launch.chart_describe",
        "Líneas de la velocidad según el tiempo. Tiempo hasta 60 mph: {0}.",
    ),
    (
        "figure.launch.chart_title",
        "{0} alcanza 60 mph en {1}, {2} en {3}",
    ),
    (
        "figure.launch.chart_title_plain",
        "Velocidad según el tiempo",
    ),
    (
        "figure.launch.describe",
        "Vista lateral de un coche que mira a la derecha, disposición {0}, {1} después de la salida, a {2} y con una aceleración de {3}. Carga del eje delantero {4}, carga del eje trasero {5}; deslizamiento delante {6}, detrás {7}. {8}.",
    ),
    (
        "figure.launch.front_grip",
        "Limitan los neumáticos delanteros",
    ),
    (
        "figure.launch.key",
        "Qué limita: neumáticos delanteros (azul, trazos cortos), neumáticos traseros (naranja, trazos largos), todos los neumáticos (verde, trazo y punto), par de los motores (puntos), potencia (línea continua).",
    ),
    (
        "figure.launch.motor_speed",
        "Limita el régimen máximo de los motores",
    ),
    ("figure.launch.phases_1", "{0} todo el tiempo"),
    ("figure.launch.phases_2", "{0} hasta {1}, después {2}"),
    (
        "figure.launch.phases_3",
        "{0} hasta {1}, {2} hasta {3}, después {4}",
    ),
    (
        "figure.launch.phases_4",
        "{0} hasta {1}, {2} hasta {3}, {4} hasta {5}, después {6}",
    ),
    ("figure.launch.power", "Limita la potencia de los motores"),
    ("figure.launch.rear_grip", "Limitan los neumáticos traseros"),
    (
        "figure.launch.title",
        "{0} tras {1}: {2}, a {3} de la salida",
    ),
    (
        "figure.launch.title_start",
        "{0} en la salida: 60 mph tras {1}",
    ),
    ("figure.launch.title_start_never", "{0} en la salida: {1}"),
    ("figure.launch.torque", "Limita el par de los motores"),
    ("figure.line.asked", "pedida"),
    ("figure.line.available", "da un motor"),
    ("figure.line.front", "eje delantero"),
    ("figure.line.front_room", "delante"),
    ("figure.line.has", "un motor da {0}"),
    ("figure.line.needed", "necesario"),
    ("figure.line.one_unit", "una unidad"),
    ("figure.line.reached", "alcanzada"),
    ("figure.line.rear", "eje trasero"),
    ("figure.line.rear_room", "detrás"),
    ("figure.line.two_units", "dos unidades"),
    (
        "figure.load_transfer.chart_describe",
        "Dos rectas: con la aceleración, la carga del eje delantero baja y la del trasero sube. A {0} son {1} y {2}. La carga es 2 : 1 a {3}; el eje delantero se levanta a {4}.",
    ),
    (
        "figure.load_transfer.chart_title",
        "Cargas por eje según la aceleración",
    ),
    (
        "figure.load_transfer.describe",
        "Vista lateral de un coche que mira a la derecha. Carga del eje delantero {0}, carga del eje trasero {1}. La fuerza de inercia de {2} actúa en el centro de gravedad, a {3} del suelo.",
    ),
    (
        "figure.load_transfer.title",
        "Al acelerar a {0}, el eje trasero lleva {1} veces la carga del delantero",
    ),
    (
        "figure.load_transfer.title_braking",
        "Al frenar a {0}, el eje delantero lleva {1} veces la carga del trasero",
    ),
    (
        "figure.load_transfer.title_steady",
        "A velocidad constante, el eje trasero lleva {1} veces la carga del delantero",
    ),
    ("figure.mark.front_lift", "se levanta"),
    ("figure.mark.two_to_one", "2 : 1"),
    (
        "figure.motor_split.arrow",
        "flecha: la fuerza con que empuja",
    ),
    (
        "figure.motor_split.chart_describe",
        "La parte delantera de la carga baja en línea recta desde {0} en reposo. Los motores iguales mantienen su reparto. Coinciden en: {1}.",
    ),
    (
        "figure.motor_split.chart_title",
        "Parte delantera de la carga y del par de motores iguales",
    ),
    (
        "figure.motor_split.circle",
        "círculo: el rozamiento que tiene la huella",
    ),
    (
        "figure.motor_split.describe",
        "Vista en planta de un coche que mira a la derecha con la disposición {0}: {1} delante, {2} detrás. En su límite de tracción de {3}, la carga se reparte {4}, delante y detrás; los motores iguales reparten su par {5}.",
    ),
    ("figure.motor_split.line_load", "carga"),
    ("figure.motor_split.mark_limit", "fin de adherencia"),
    (
        "figure.motor_split.note_equal",
        "con el mismo par de cada motor (cada uno a su máximo: {0})",
    ),
    (
        "figure.motor_split.note_load",
        "carga, delante y detrás, en el límite de {0}",
    ),
    (
        "figure.motor_split.note_torque",
        "par de motores iguales, delante y detrás",
    ),
    (
        "figure.motor_split.title",
        "{0}: par y carga coinciden a {1}",
    ),
    (
        "figure.motor_split.title_beyond",
        "{0}: par y carga coincidirían a {1}, pero los neumáticos llegan solo a {2}",
    ),
    (
        "figure.motor_split.title_braking",
        "{0}: par y carga coincidirían solo al frenar, a {1}",
    ),
    (
        "figure.motor_split.title_one_axle",
        "{0} mueve un solo eje y alcanza {1}",
    ),
    ("figure.own", "Vehículo según los datos dados."),
    (
        "figure.packaging.chart_describe",
        "El espacio en el eje delantero baja con el ángulo de dirección; a {0} es {1}. El eje trasero conserva {2}. Una unidad necesita {3}, dos necesitan {4}.",
    ),
    (
        "figure.packaging.chart_title",
        "Las ruedas que giran barren el espacio: el eje delantero pierde {0} a {1}",
    ),
    (
        "figure.packaging.describe",
        "Vista en planta de un coche que mira a la derecha, con las ruedas delanteras a tope, {0} a la izquierda. {1}. Una unidad tiene {2} y {3} de ancho. Entre las ruedas hay {4} delante y {5} detrás.",
    ),
    (
        "figure.packaging.key_room",
        "a trazos: espacio para unidades",
    ),
    (
        "figure.packaging.key_swept",
        "raya y punto: lo que barre una rueda delantera de tope a tope",
    ),
    ("figure.packaging.key_unit", "lleno: unidades, a escala"),
    (
        "figure.packaging.key_unit_cut",
        "lleno: unidades, cortadas donde son demasiado anchas",
    ),
    (
        "figure.packaging.note_extraordinary",
        "más de 16 kW/L para motor, inversor, engranajes y diferencial juntos: extraordinario, dice el oficio (sin fuente)",
    ),
    (
        "figure.packaging.note_front",
        "espacio en el eje delantero; sus unidades necesitan {0}",
    ),
    (
        "figure.packaging.note_front_free",
        "espacio en el eje delantero, que no lleva unidad",
    ),
    (
        "figure.packaging.note_rear",
        "espacio en el eje trasero; sus unidades necesitan {0}",
    ),
    (
        "figure.packaging.note_rear_free",
        "espacio en el eje trasero, que no lleva unidad",
    ),
    (
        "figure.packaging.note_unit",
        "una unidad, {0} para el conjunto",
    ),
    ("figure.packaging.title", "{0} cabe, y sobran {1}"),
    ("figure.packaging.title_cannot", "{0} no cabe: faltan {1}"),
    ("figure.rear_load", "carga trasera, {0}"),
    (
        "figure.squat",
        "Hundimiento dibujado {0} veces mayor que el real.",
    ),
    ("figure.traction.axis", "límite de tracción, g"),
    (
        "figure.traction.bars_describe",
        "Barras del límite de tracción por disposición: {0}.",
    ),
    ("figure.traction.bars_row", "{0} {1}, {2}"),
    (
        "figure.traction.bars_sub",
        "Límite de tracción con una adherencia máxima de {0}.",
    ),
    (
        "figure.traction.bars_title",
        "{0} alcanza {1}, {2} alcanza {3}",
    ),
    (
        "figure.traction.bars_title_one",
        "Límite de tracción de {0}: {1}",
    ),
    (
        "figure.traction.cannot_hold",
        "aquí no puede mantener su velocidad: {0}",
    ),
    (
        "figure.traction.chart_describe",
        "Líneas del límite de tracción según la adherencia máxima. A {0}: {1}.",
    ),
    (
        "figure.traction.chart_title",
        "Límite de tracción según la adherencia",
    ),
    ("figure.traction.mu", "adherencia {0}"),
    (
        "figure.traction.side_describe",
        "Vista lateral de un coche en el límite de tracción de la disposición {0}: {1}, {2}. Carga del eje delantero {3}, carga del eje trasero {4}; fuerza de tracción delantera {5}, trasera {6}.",
    ),
    ("figure.traction.side_title", "{0}: {1} y no más, {2}"),
    ("figure.tractive", "fuerza de tracción"),
    (
        "figure.turn_in_place.arrow",
        "flecha: el rozamiento que usa, opuesto al deslizamiento",
    ),
    ("figure.turn_in_place.centre", "centro de giro"),
    (
        "figure.turn_in_place.chart_describe",
        "El par en la rueda que más necesita crece en proporción al rozamiento. A {0} es {1}.",
    ),
    (
        "figure.turn_in_place.chart_title",
        "Par para girar en el sitio según el rozamiento",
    ),
    (
        "figure.turn_in_place.circle",
        "círculo: todo el rozamiento que tiene la huella",
    ),
    (
        "figure.turn_in_place.describe",
        "Vista en planta de un coche que mira a la derecha y gira en el sitio en sentido antihorario. Las ruedas derechas empujan hacia delante, las izquierdas hacia atrás: cada rueda delantera con {0}, cada rueda trasera con {1}. Par medio {2} en una rueda, energía {3} para una vuelta completa.",
    ),
    (
        "figure.turn_in_place.describe_cannot",
        "Vista en planta de un coche con la disposición {0}. {1}",
    ),
    (
        "figure.turn_in_place.moment",
        "Giro en el sitio: {1} girados en {0}",
    ),
    (
        "figure.turn_in_place.moment_describe",
        "Vista en planta de un coche con la disposición {0}, {1} después de empezar a girar en sentido antihorario. Ha girado {2}; su velocidad de guiñada es {3}. Su centro de gravedad está a {4} de donde estaba. Huella que desliza más deprisa: {5}.",
    ),
    (
        "figure.turn_in_place.note_drift",
        "cuesta abajo en cada vuelta lenta",
    ),
    (
        "figure.turn_in_place.note_drives",
        "lo máximo que dan las dos ruedas motrices",
    ),
    (
        "figure.turn_in_place.note_energy",
        "a los neumáticos y al suelo en una vuelta completa",
    ),
    (
        "figure.turn_in_place.note_full_turn",
        "para la primera vuelta completa",
    ),
    (
        "figure.turn_in_place.note_holds",
        "con que resiste el otro eje",
    ),
    (
        "figure.turn_in_place.note_left",
        "a la izquierda: el centro de giro",
    ),
    (
        "figure.turn_in_place.note_lock",
        "círculo del eje delantero con la dirección a tope: no es en el sitio",
    ),
    (
        "figure.turn_in_place.note_share",
        "de él empuja a lo largo de la rueda",
    ),
    (
        "figure.turn_in_place.note_slide",
        "huella que desliza más deprisa",
    ),
    (
        "figure.turn_in_place.note_torque",
        "en cada rueda de media (un motor da {0})",
    ),
    (
        "figure.turn_in_place.note_torque_alone",
        "en cada rueda de media",
    ),
    (
        "figure.turn_in_place.note_tread",
        "de banda perdida en una vuelta ({0} a {1}, una suposición)",
    ),
    ("figure.turn_in_place.note_way", "desde donde estaba el CG"),
    ("figure.turn_in_place.note_yaw", "velocidad de guiñada"),
    (
        "figure.turn_in_place.slide",
        "a trazos: velocidad de deslizamiento de la huella",
    ),
    (
        "figure.turn_in_place.spin_describe",
        "Velocidad de guiñada frente al tiempo. {0}",
    ),
    (
        "figure.turn_in_place.spin_title",
        "{0} para una vuelta completa a {1}",
    ),
    (
        "figure.turn_in_place.spin_title_plain",
        "Velocidad de guiñada desde parado",
    ),
    (
        "figure.turn_in_place.surface_no",
        "no es posible; {0} por vuelta",
    ),
    (
        "figure.turn_in_place.surface_yes",
        "posible; {0} por vuelta",
    ),
    (
        "figure.turn_in_place.surfaces_describe",
        "Barras del par medio en rueda necesario para girar en el sitio, por superficie: {0}.",
    ),
    (
        "figure.turn_in_place.surfaces_sub",
        "Disposición {0}, suelo llano.",
    ),
    (
        "figure.turn_in_place.surfaces_title",
        "{0} pide {1} veces el par de {2}",
    ),
    (
        "figure.turn_in_place.title",
        "Giro en el sitio: todas las huellas deslizan",
    ),
    (
        "figure.turn_in_place.title_cannot",
        "{0} no puede girar en el sitio",
    ),
    (
        "figure.turn_in_place.title_torque",
        "Girar en el sitio pide {0} en cada rueda",
    ),
    (
        "figure.turn_in_place.trace",
        "líneas: huellas de los neumáticos en el suelo",
    ),
    ("figure.weight", "peso"),
    ("figure.wheelbase", "batalla {0}"),
    (
        "help.air.density",
        "Densidad del aire. A nivel del mar y 15 °C: 1,225 kg/m³.",
    ),
    (
        "help.choice.differential_cost",
        "En la unidad de los otros costes. El valor por defecto es inventado.",
    ),
    (
        "help.choice.disconnect_cost",
        "En la unidad de los otros costes. El valor por defecto es inventado.",
    ),
    (
        "help.choice.gear_set_cost",
        "En la unidad de los otros costes. El valor por defecto es inventado.",
    ),
    (
        "help.choice.half_shaft_cost",
        "En la unidad de los otros costes. El valor por defecto es inventado.",
    ),
    (
        "help.choice.inverter_cost",
        "En la unidad de los otros costes. El valor por defecto es inventado.",
    ),
    (
        "help.choice.least_range",
        "En el ciclo que se conduce. Si se omite, vale cualquier autonomía.",
    ),
    (
        "help.choice.motor_cost",
        "En cualquier unidad. El valor por defecto es inventado.",
    ),
    (
        "help.choice.spread",
        "Cada dato se varía solo, hacia arriba y abajo en esta parte de su valor.",
    ),
    (
        "help.choice.start_grade",
        "El coche debe arrancar en ella desde parado con sus motores. Si se omite, no hace falta.",
    ),
    (
        "help.choice.start_surface",
        "Un firme de la tabla de adherencia.",
    ),
    (
        "help.choice.target_time",
        "Una disposición que tarda más no cumple el encargo. Si se omite, vale cualquier tiempo.",
    ),
    (
        "help.choice.torque_vectoring",
        "Si los motores deben pasar par de izquierda a derecha, sin los frenos.",
    ),
    (
        "help.choice.turn_in_place",
        "Si una disposición debe girar el coche en el sitio por contrarrotación.",
    ),
    (
        "help.choice.turn_surface",
        "Un firme de la tabla de adherencia, llano.",
    ),
    (
        "help.choice.weight_cost",
        "Cuánto vale un coste menor. El valor por defecto es inventado.",
    ),
    (
        "help.choice.weight_energy",
        "Cuánto vale menos energía por distancia. El valor por defecto es inventado.",
    ),
    (
        "help.choice.weight_room",
        "Cuánto vale la anchura libre entre las ruedas traseras: allí va el equipaje. El valor por defecto es inventado.",
    ),
    (
        "help.choice.weight_time",
        "Cuánto vale un tiempo menor hasta 60 mph. El valor por defecto es inventado.",
    ),
    (
        "help.cornering.axle",
        "Eje cuyos dos motores trabajan uno contra otro o cuya rueda interior se frena.",
    ),
    ("help.cornering.chart", "Lo que muestra el gráfico."),
    (
        "help.cornering.front_share",
        "Parte del momento de guiñada que da un freno delantero mientras los motores traseros dan el resto.",
    ),
    (
        "help.cornering.radius",
        "Radio de la trayectoria del centro de gravedad. El coche gira a la izquierda; a la derecha es la imagen simétrica.",
    ),
    ("help.cornering.speed", "Velocidad del viraje estacionario."),
    (
        "help.cornering.yaw_moment",
        "Momento de guiñada hacia el interior de la curva que deben dar los motores o los frenos.",
    ),
    (
        "help.idle_drag.acceleration",
        "Aceleración a la que se mira el reparto del par; por debajo de cero los motores frenan.",
    ),
    (
        "help.idle_drag.auxiliary_power",
        "Potencia de todo lo que no impulsa: luces, bombas, calefacción.",
    ),
    (
        "help.idle_drag.chart",
        "Lo que muestra el gráfico: pérdidas de un motor inactivo, el mejor reparto, la energía o la velocidad a lo largo del ciclo.",
    ),
    (
        "help.idle_drag.cycle",
        "Lo que se conduce: el ciclo publicado WLTC clase 3b, una velocidad constante o un ciclo propio.",
    ),
    (
        "help.idle_drag.regeneration_power",
        "Potencia máxima con que frenan todos los motores juntos; los frenos toman el resto.",
    ),
    (
        "help.idle_drag.speed",
        "Velocidad a la que se mira el reparto del par, y la velocidad constante.",
    ),
    (
        "help.idle_drag.trace",
        "Un ciclo propio: líneas de tiempo en s y velocidad en km/h. El encabezado puede nombrar m/s o mph. En un archivo de escenario y como atributo, también la dirección de un archivo con las líneas.",
    ),
    (
        "help.launch.model",
        "Completo: los neumáticos deslizan y la carga pasa tan deprisa como dejan los muelles. Ideal: los neumáticos agarran y la carga pasa al instante, como en los primeros cálculos a mano.",
    ),
    (
        "help.launch.slip_target",
        "Deslizamiento que mantiene el control de tracción. Si falta: el de adherencia máxima.",
    ),
    (
        "help.launch.time",
        "Momento de la arrancada que muestra la vista lateral.",
    ),
    (
        "help.launch.traction_control",
        "Activado: los motores mantienen el deslizamiento fijado. Desactivado: dan todo lo que tienen.",
    ),
    ("help.layout", "La disposición que muestra la figura."),
    (
        "help.layouts",
        "Las disposiciones que se comparan, según dónde están sus motores.",
    ),
    (
        "help.load_transfer.acceleration",
        "Aceleración a lo largo de la carretera. Frenar es negativo.",
    ),
    (
        "help.load_transfer.speed",
        "Velocidad a la que actúan la resistencia del aire y la sustentación. En reposo no las hay.",
    ),
    (
        "help.motor_split.drive_unit_cost",
        "Coste de un motor con su inversor y sus engranajes, en cualquier unidad. Es un supuesto: ponga el suyo.",
    ),
    (
        "help.motor_split.drive_unit_mass",
        "Masa de un motor con su inversor y sus engranajes. Es un supuesto: ponga el suyo.",
    ),
    (
        "help.motor_split.speed",
        "Velocidad hasta la que los motores deben alcanzar el límite de tracción.",
    ),
    (
        "help.packaging.box_fill",
        "Volumen de la unidad entre el de su caja exterior.",
    ),
    (
        "help.packaging.clearance",
        "Queda libre de todo, por el movimiento de la rueda y la suciedad.",
    ),
    ("help.packaging.gap", "Entre dos unidades en un eje."),
    (
        "help.packaging.gear_power_density",
        "Potencia entre volumen de engranajes y diferencial juntos. El valor por defecto es inventado.",
    ),
    (
        "help.packaging.half_shaft_length",
        "Del centro de la rueda a la unidad. Un semieje más corto dobla demasiado sus juntas.",
    ),
    (
        "help.packaging.inverter_power_density",
        "Potencia entre volumen del inversor solo. El valor por defecto es inventado.",
    ),
    (
        "help.packaging.motor_power_density",
        "Potencia entre volumen del motor solo. El valor por defecto es inventado.",
    ),
    (
        "help.packaging.structure_width",
        "Anchura que ocupan la carrocería y la suspensión en cada lado.",
    ),
    (
        "help.packaging.unit_height",
        "Altura de la caja exterior de la unidad.",
    ),
    (
        "help.packaging.unit_length",
        "La caja está centrada sobre el eje.",
    ),
    (
        "help.surface.friction_peak",
        "Mayor coeficiente de adherencia entre el neumático y el suelo.",
    ),
    (
        "help.surface.friction_peak_left",
        "Mayor coeficiente de adherencia bajo las ruedas izquierdas, si es distinto.",
    ),
    (
        "help.surface.friction_peak_right",
        "Mayor coeficiente de adherencia bajo las ruedas derechas, si es distinto.",
    ),
    (
        "help.surface.friction_sliding",
        "Coeficiente de rozamiento de un neumático que desliza. Si falta y no hay superficie: la adherencia máxima del propio vehículo.",
    ),
    (
        "help.surface.friction_sliding_left",
        "Coeficiente de rozamiento al deslizar bajo las ruedas izquierdas, si es distinto.",
    ),
    (
        "help.surface.friction_sliding_right",
        "Coeficiente de rozamiento al deslizar bajo las ruedas derechas, si es distinto.",
    ),
    (
        "help.surface.grade",
        "Pendiente de la carretera, subida entre avance horizontal. Cuesta arriba es positiva.",
    ),
    (
        "help.surface.kind",
        "Una superficie de la tabla publicada de adherencia. Si falta: asfalto seco con los neumáticos del vehículo.",
    ),
    (
        "help.traction.front_axle_type",
        "Independiente, o un eje rígido cuyo par motor pasa carga de la rueda derecha a la izquierda.",
    ),
    (
        "help.traction.front_differential",
        "Cómo llega el par de un único motor delantero a sus dos ruedas.",
    ),
    (
        "help.traction.front_share",
        "Parte delantera de la fuerza de tracción, si es fija. Si falta: cada eje da lo que puede.",
    ),
    (
        "help.traction.motor_limit",
        "Si también puede limitar el par de los motores, o solo los neumáticos y el suelo.",
    ),
    (
        "help.traction.rear_axle_type",
        "Independiente, o un eje rígido cuyo par motor pasa carga de la rueda derecha a la izquierda.",
    ),
    (
        "help.traction.rear_differential",
        "Cómo llega el par de un único motor trasero a sus dos ruedas.",
    ),
    (
        "help.traction.speed",
        "Velocidad a la que actúan la resistencia del aire y la sustentación.",
    ),
    (
        "help.turn_in_place.front_to_rear_wheel_speed",
        "Velocidad de las ruedas delanteras entre la de las traseras al girar en el sitio.",
    ),
    (
        "help.turn_in_place.time",
        "Momento del arranque del giro que muestra la vista en planta. Sin él se muestra el giro lento y estacionario.",
    ),
    (
        "help.turn_in_place.wear_coefficient",
        "Volumen de banda desgastado por energía de rozamiento. Es una suposición: sin él se toma un valor ajustado al desgaste de la conducción corriente. Órdenes en carretera: 0,001 a 0,01 mm³/J.",
    ),
    (
        "help.turn_in_place.yaw_rate",
        "Velocidad de guiñada para la que los motores ajustan la velocidad de las ruedas.",
    ),
    (
        "help.vehicle.anti_lift_front",
        "Parte del cambio de carga delantero que llevan los brazos de la suspensión en lugar de los muelles.",
    ),
    (
        "help.vehicle.anti_squat_rear",
        "Parte del cambio de carga trasero que llevan los brazos de la suspensión en lugar de los muelles.",
    ),
    (
        "help.vehicle.axle_load_front",
        "Lo que marca una báscula bajo las ruedas delanteras. Junto con el eje trasero da la masa y la posición del centro de gravedad, si no se indican.",
    ),
    (
        "help.vehicle.axle_load_rear",
        "Lo que marca una báscula bajo las ruedas traseras.",
    ),
    (
        "help.vehicle.base",
        "Un vehículo de muestra inventado. Cada uno de los demás campos del vehículo cambia uno de sus valores.",
    ),
    (
        "help.vehicle.battery_energy",
        "Energía utilizable de la batería.",
    ),
    (
        "help.vehicle.battery_power",
        "Potencia máxima que la batería da a todos los motores juntos. Si falta: toda la que piden.",
    ),
    (
        "help.vehicle.bearing_loss",
        "Pérdida en los rodamientos de un motor a la velocidad base, como parte de la potencia máxima. El valor es inventado.",
    ),
    (
        "help.vehicle.body",
        "Contorno de la carrocería que dibuja la figura. No entra en los cálculos.",
    ),
    (
        "help.vehicle.cg_height",
        "Altura del centro de gravedad (CG) sobre el suelo.",
    ),
    (
        "help.vehicle.cg_to_front_axle",
        "Distancia del centro de gravedad (CG) por detrás del eje delantero.",
    ),
    (
        "help.vehicle.copper_loss_induction",
        "Pérdida en el estátor, el rotor y el inversor de un motor de inducción con el par máximo, como parte de su potencia máxima. El valor es inventado mientras no dé el suyo.",
    ),
    (
        "help.vehicle.copper_loss_magnet",
        "Pérdida en el cobre y el inversor de un motor de imanes permanentes con el par máximo, como parte de su potencia máxima. El valor es inventado mientras no dé el suyo.",
    ),
    (
        "help.vehicle.cornering_stiffness_front",
        "Fuerza lateral de un neumático delantero por ángulo de deriva, con ángulos pequeños y su carga en reposo.",
    ),
    (
        "help.vehicle.cornering_stiffness_rear",
        "Lo mismo para un neumático trasero.",
    ),
    (
        "help.vehicle.damping_ratio",
        "Amortiguamiento de la carrocería sobre sus muelles, como parte del crítico.",
    ),
    (
        "help.vehicle.disconnect",
        "Ejes cuyos motores pueden desconectarse de las ruedas cuando no dan par.",
    ),
    (
        "help.vehicle.drag_area",
        "Coeficiente de resistencia aerodinámica por área frontal.",
    ),
    (
        "help.vehicle.drag_height",
        "Altura a la que actúa la resistencia del aire. Si falta: la altura del CG.",
    ),
    (
        "help.vehicle.drive_efficiency",
        "Parte de la potencia que llega, igual de la batería a la rueda y a la inversa.",
    ),
    (
        "help.vehicle.eddy_loss",
        "Pérdida en el hierro por corrientes parásitas a la velocidad base y con campo pleno, como parte de la potencia máxima. El valor es inventado.",
    ),
    (
        "help.vehicle.final_drive_ratio",
        "Relación entre el árbol de transmisión y el eje rígido.",
    ),
    (
        "help.vehicle.front_machine",
        "Tipo de los motores del eje delantero: de imanes permanentes o de inducción.",
    ),
    (
        "help.vehicle.gear_efficiency",
        "Parte de la potencia de un motor que transmiten sus engranajes.",
    ),
    (
        "help.vehicle.hysteresis_loss",
        "Pérdida en el hierro por histéresis a la velocidad base y con campo pleno, como parte de la potencia máxima. El valor es inventado.",
    ),
    (
        "help.vehicle.lift_area_front",
        "Coeficiente de sustentación del eje delantero por área frontal. La carga aerodinámica hacia abajo es negativa.",
    ),
    (
        "help.vehicle.lift_area_rear",
        "Coeficiente de sustentación del eje trasero por área frontal. La carga aerodinámica hacia abajo es negativa.",
    ),
    (
        "help.vehicle.magnetising_loss",
        "Pérdida en el cobre de la corriente que crea el campo de un motor de inducción, como parte de su potencia máxima. El valor es inventado.",
    ),
    ("help.vehicle.mass", "Masa del vehículo con su carga."),
    (
        "help.vehicle.max_steer_angle",
        "Cuánto giran las ruedas delanteras hacia cada lado.",
    ),
    (
        "help.vehicle.motor_decline_speed",
        "Velocidad del motor por encima de la cual su potencia baja en proporción inversa a la velocidad. Si falta: ninguna.",
    ),
    (
        "help.vehicle.motor_max_speed",
        "Velocidad máxima del motor. Si falta: ninguna.",
    ),
    ("help.vehicle.motor_power", "Potencia máxima de un motor."),
    (
        "help.vehicle.motor_ratio",
        "Relación entre un motor y sus ruedas.",
    ),
    (
        "help.vehicle.motor_torque",
        "Par máximo de un motor en su eje de salida.",
    ),
    (
        "help.vehicle.rear_machine",
        "Tipo de los motores del eje trasero: de imanes permanentes o de inducción.",
    ),
    (
        "help.vehicle.ride_frequency_front",
        "Frecuencia natural de la carrocería sobre sus muelles delanteros.",
    ),
    (
        "help.vehicle.ride_frequency_rear",
        "Frecuencia natural de la carrocería sobre sus muelles traseros.",
    ),
    (
        "help.vehicle.roll_stiffness_front_share",
        "Parte delantera de la rigidez al balanceo.",
    ),
    (
        "help.vehicle.rolling_resistance",
        "Coeficiente de resistencia a la rodadura.",
    ),
    (
        "help.vehicle.rotor_inertia",
        "Momento de inercia de un rotor respecto de su propio eje.",
    ),
    (
        "help.vehicle.track_front",
        "Distancia entre las ruedas delanteras.",
    ),
    (
        "help.vehicle.track_rear",
        "Distancia entre las ruedas traseras.",
    ),
    (
        "help.vehicle.tyre_friction",
        "Mayor coeficiente de adherencia que tienen los neumáticos del propio vehículo sobre asfalto seco.",
    ),
    (
        "help.vehicle.tyre_load_sensitivity",
        "Parte de su adherencia que pierde un neumático cuando su carga aumenta en la carga de referencia.",
    ),
    (
        "help.vehicle.tyre_peak_slip",
        "Deslizamiento con el que un neumático agarra más. Si falta, o sin inercia de rueda: el neumático agarra al instante y no necesita deslizar.",
    ),
    (
        "help.vehicle.tyre_pressure",
        "Presión de inflado. Fija el tamaño de la huella.",
    ),
    (
        "help.vehicle.tyre_reference_load",
        "Carga de la rueda a la que vale el coeficiente de adherencia dado. Si falta: un cuarto del peso.",
    ),
    (
        "help.vehicle.tyre_relaxation_length",
        "Distancia que rueda un neumático mientras se forma su deslizamiento.",
    ),
    (
        "help.vehicle.tyre_width_front",
        "Anchura de un neumático delantero, para la figura.",
    ),
    (
        "help.vehicle.tyre_width_rear",
        "Anchura de un neumático trasero, para la figura.",
    ),
    (
        "help.vehicle.weakening_loss",
        "Pérdida en el cobre de la corriente que anularía el campo de los imanes, como parte de la potencia máxima. Por encima de la velocidad base circula una parte, con par y sin él. El valor es inventado.",
    ),
    (
        "help.vehicle.wheel_inertia",
        "Momento de inercia de una rueda con su neumático respecto de su eje.",
    ),
    (
        "help.vehicle.wheel_radius",
        "Radio de rodadura de las ruedas.",
    ),
    ("help.vehicle.wheelbase", "Distancia entre los ejes."),
    (
        "help.vehicle.windage_loss",
        "Pérdida de un rotor en su aire a la velocidad base, como parte de la potencia máxima. El valor es inventado.",
    ),
    (
        "help.vehicle.yaw_inertia",
        "Momento de inercia respecto al eje vertical; m·a·b si no se indica (práctica común).",
    ),
    ("input.air.density", "densidad del aire"),
    ("input.choice.differential_cost", "coste de un diferencial"),
    ("input.choice.disconnect_cost", "coste de un desacople"),
    (
        "input.choice.gear_set_cost",
        "coste de un juego de engranajes",
    ),
    ("input.choice.half_shaft_cost", "coste de un semieje"),
    ("input.choice.inverter_cost", "coste de un inversor"),
    ("input.choice.least_range", "autonomía mínima"),
    ("input.choice.motor_cost", "coste de un motor"),
    ("input.choice.spread", "margen de la variación"),
    ("input.choice.start_grade", "pendiente de arranque"),
    ("input.choice.start_surface", "firme de esa pendiente"),
    ("input.choice.target_time", "tiempo máximo hasta 60 mph"),
    ("input.choice.torque_vectoring", "debe repartir el par"),
    ("input.choice.turn_in_place", "debe girar en el sitio"),
    ("input.choice.turn_surface", "firme en el que gira"),
    ("input.choice.weight_cost", "peso del coste"),
    ("input.choice.weight_energy", "peso de la energía"),
    ("input.choice.weight_room", "peso del espacio detrás"),
    ("input.choice.weight_time", "peso del tiempo"),
    ("input.cornering.axle", "eje que lo produce"),
    ("input.cornering.chart", "gráfico"),
    (
        "input.cornering.front_share",
        "parte de los frenos en el caso mixto",
    ),
    ("input.cornering.radius", "radio del viraje"),
    ("input.cornering.speed", "velocidad"),
    ("input.cornering.yaw_moment", "momento de guiñada deseado"),
    ("input.idle_drag.acceleration", "aceleración"),
    ("input.idle_drag.auxiliary_power", "otros consumos"),
    ("input.idle_drag.chart", "gráfico"),
    ("input.idle_drag.cycle", "ciclo"),
    (
        "input.idle_drag.regeneration_power",
        "potencia de frenado regenerativo",
    ),
    ("input.idle_drag.speed", "velocidad"),
    ("input.idle_drag.trace", "ciclo propio (archivo CSV)"),
    ("input.launch.model", "modelo"),
    ("input.launch.slip_target", "deslizamiento objetivo"),
    ("input.launch.time", "instante mostrado"),
    ("input.launch.traction_control", "control de tracción"),
    ("input.layout", "disposición mostrada"),
    ("input.layouts", "disposiciones"),
    ("input.load_transfer.acceleration", "aceleración"),
    ("input.load_transfer.speed", "velocidad"),
    (
        "input.motor_split.drive_unit_cost",
        "coste de una unidad motriz",
    ),
    (
        "input.motor_split.drive_unit_mass",
        "masa de una unidad motriz",
    ),
    ("input.motor_split.speed", "velocidad"),
    (
        "input.packaging.box_fill",
        "parte de su caja que llena una unidad",
    ),
    ("input.packaging.clearance", "holgura junto a una rueda"),
    ("input.packaging.gap", "separación entre dos unidades"),
    (
        "input.packaging.gear_power_density",
        "engranajes y diferencial, potencia por litro",
    ),
    (
        "input.packaging.half_shaft_length",
        "longitud mínima de un semieje",
    ),
    (
        "input.packaging.inverter_power_density",
        "inversor, potencia por litro",
    ),
    (
        "input.packaging.motor_power_density",
        "motor, potencia por litro",
    ),
    (
        "input.packaging.structure_width",
        "largueros y suspensión junto a una rueda",
    ),
    ("input.packaging.unit_height", "altura de una unidad"),
    (
        "input.packaging.unit_length",
        "longitud de una unidad a lo largo del coche",
    ),
    ("input.surface.friction_peak", "adherencia máxima"),
    (
        "input.surface.friction_peak_left",
        "adherencia máxima, izquierda",
    ),
    (
        "input.surface.friction_peak_right",
        "adherencia máxima, derecha",
    ),
    ("input.surface.friction_sliding", "rozamiento al deslizar"),
    (
        "input.surface.friction_sliding_left",
        "rozamiento al deslizar, izquierda",
    ),
    (
        "input.surface.friction_sliding_right",
        "rozamiento al deslizar, derecha",
    ),
    ("input.surface.grade", "pendiente"),
    ("input.surface.kind", "superficie"),
    ("input.traction.front_axle_type", "eje delantero"),
    ("input.traction.front_differential", "diferencial delantero"),
    ("input.traction.front_share", "parte delantera de la fuerza"),
    ("input.traction.motor_limit", "motores"),
    ("input.traction.rear_axle_type", "eje trasero"),
    ("input.traction.rear_differential", "diferencial trasero"),
    ("input.traction.speed", "velocidad"),
    (
        "input.turn_in_place.front_to_rear_wheel_speed",
        "velocidad de rueda, delante entre detrás",
    ),
    ("input.turn_in_place.time", "instante mostrado"),
    (
        "input.turn_in_place.wear_coefficient",
        "coeficiente de desgaste",
    ),
    (
        "input.turn_in_place.yaw_rate",
        "velocidad de guiñada pedida",
    ),
    ("input.vehicle.anti_lift_front", "antielevación delantera"),
    ("input.vehicle.anti_squat_rear", "antihundimiento trasero"),
    (
        "input.vehicle.axle_load_front",
        "eje delantero en la báscula",
    ),
    ("input.vehicle.axle_load_rear", "eje trasero en la báscula"),
    ("input.vehicle.base", "vehículo"),
    ("input.vehicle.battery_energy", "batería"),
    ("input.vehicle.battery_power", "potencia de la batería"),
    ("input.vehicle.bearing_loss", "pérdida en los rodamientos"),
    ("input.vehicle.body", "contorno de la carrocería"),
    ("input.vehicle.cg_height", "altura del CG"),
    ("input.vehicle.cg_to_front_axle", "CG tras el eje delantero"),
    (
        "input.vehicle.copper_loss_induction",
        "pérdida en el cobre, inducción",
    ),
    (
        "input.vehicle.copper_loss_magnet",
        "pérdida en el cobre, imanes",
    ),
    (
        "input.vehicle.cornering_stiffness_front",
        "rigidez de deriva, neumático delantero",
    ),
    (
        "input.vehicle.cornering_stiffness_rear",
        "rigidez de deriva, neumático trasero",
    ),
    ("input.vehicle.damping_ratio", "factor de amortiguamiento"),
    ("input.vehicle.disconnect", "desconexión de eje"),
    (
        "input.vehicle.drag_area",
        "área de resistencia aerodinámica",
    ),
    (
        "input.vehicle.drag_height",
        "altura de la resistencia aerodinámica",
    ),
    (
        "input.vehicle.drive_efficiency",
        "rendimiento del accionamiento, de batería a rueda",
    ),
    (
        "input.vehicle.eddy_loss",
        "pérdida por corrientes parásitas",
    ),
    (
        "input.vehicle.final_drive_ratio",
        "relación de transmisión final",
    ),
    ("input.vehicle.front_machine", "motor delantero"),
    (
        "input.vehicle.gear_efficiency",
        "rendimiento de los engranajes",
    ),
    ("input.vehicle.hysteresis_loss", "pérdida por histéresis"),
    (
        "input.vehicle.lift_area_front",
        "área de sustentación delantera",
    ),
    (
        "input.vehicle.lift_area_rear",
        "área de sustentación trasera",
    ),
    ("input.vehicle.magnetising_loss", "pérdida de magnetización"),
    ("input.vehicle.mass", "masa"),
    (
        "input.vehicle.max_steer_angle",
        "ángulo de dirección a tope",
    ),
    (
        "input.vehicle.motor_decline_speed",
        "segunda velocidad base del motor",
    ),
    ("input.vehicle.motor_max_speed", "régimen máximo del motor"),
    ("input.vehicle.motor_power", "potencia del motor"),
    (
        "input.vehicle.motor_ratio",
        "relación de transmisión del motor",
    ),
    ("input.vehicle.motor_torque", "par del motor"),
    ("input.vehicle.rear_machine", "motor trasero"),
    (
        "input.vehicle.ride_frequency_front",
        "frecuencia de suspensión delantera",
    ),
    (
        "input.vehicle.ride_frequency_rear",
        "frecuencia de suspensión trasera",
    ),
    (
        "input.vehicle.roll_stiffness_front_share",
        "parte delantera de la rigidez al balanceo",
    ),
    (
        "input.vehicle.rolling_resistance",
        "resistencia a la rodadura",
    ),
    ("input.vehicle.rotor_inertia", "inercia del rotor"),
    ("input.vehicle.track_front", "vía delantera"),
    ("input.vehicle.track_rear", "vía trasera"),
    (
        "input.vehicle.tyre_friction",
        "adherencia de los neumáticos",
    ),
    (
        "input.vehicle.tyre_load_sensitivity",
        "sensibilidad a la carga",
    ),
    (
        "input.vehicle.tyre_peak_slip",
        "deslizamiento de adherencia máxima",
    ),
    ("input.vehicle.tyre_pressure", "presión de los neumáticos"),
    (
        "input.vehicle.tyre_reference_load",
        "carga de rueda de referencia",
    ),
    (
        "input.vehicle.tyre_relaxation_length",
        "longitud de relajación",
    ),
    (
        "input.vehicle.tyre_width_front",
        "anchura del neumático delantero",
    ),
    (
        "input.vehicle.tyre_width_rear",
        "anchura del neumático trasero",
    ),
    (
        "input.vehicle.weakening_loss",
        "pérdida por debilitar el campo",
    ),
    ("input.vehicle.wheel_inertia", "inercia de rueda"),
    ("input.vehicle.wheel_radius", "radio de rueda"),
    ("input.vehicle.wheelbase", "batalla"),
    ("input.vehicle.windage_loss", "pérdida por ventilación"),
    ("input.vehicle.yaw_inertia", "inercia de guiñada"),
    ("option.as_fitted", "los montados"),
    ("option.best_split", "mejor reparto"),
    ("option.both", "delantero y trasero"),
    ("option.constant_radius", "ensayo de radio constante"),
    ("option.energy", "energía en el ciclo"),
    ("option.front", "delantero"),
    ("option.full", "modelo completo"),
    ("option.ideal", "adherencia ideal"),
    ("option.idle_losses", "pérdidas de un motor inactivo"),
    ("option.independent", "independiente"),
    ("option.induction", "inducción"),
    ("option.locked", "bloqueado"),
    ("option.none", "ninguno"),
    ("option.off", "desactivado"),
    ("option.on", "activado"),
    ("option.open", "abierto"),
    ("option.open_with_brakes", "abierto, con los frenos"),
    ("option.own", "ciclo propio"),
    ("option.permanent_magnet", "imanes permanentes"),
    ("option.rear", "trasero"),
    ("option.saloon", "berlina"),
    ("option.small_car", "coche pequeño"),
    ("option.solid", "rígido"),
    ("option.speed", "velocidad en el ciclo"),
    ("option.sports_car", "deportivo"),
    ("option.steady", "velocidad constante"),
    ("option.step_steer", "escalón de dirección"),
    ("option.unlimited", "sin límite"),
    ("option.utility", "vehículo de trabajo"),
    ("option.wltc", "WLTC clase 3b"),
    (
        "option.yaw_moment",
        "momento de guiñada y aceleración lateral",
    ),
    ("output.choice.because", "por qué"),
    (
        "output.choice.becomes.battery_energy",
        "recomendada en su lugar (la batería)",
    ),
    (
        "output.choice.becomes.cg_height",
        "recomendada en su lugar (la altura del CG)",
    ),
    (
        "output.choice.becomes.friction_peak",
        "recomendada en su lugar (el rozamiento)",
    ),
    (
        "output.choice.becomes.inverter_cost",
        "recomendada en su lugar (el coste de un inversor)",
    ),
    (
        "output.choice.becomes.least_range",
        "recomendada en su lugar (la autonomía pedida)",
    ),
    (
        "output.choice.becomes.mass",
        "recomendada en su lugar (la masa)",
    ),
    (
        "output.choice.becomes.motor_cost",
        "recomendada en su lugar (el coste de un motor)",
    ),
    (
        "output.choice.becomes.motor_power",
        "recomendada en su lugar (la potencia del motor)",
    ),
    (
        "output.choice.becomes.motor_torque",
        "recomendada en su lugar (el par del motor)",
    ),
    (
        "output.choice.becomes.start_grade",
        "recomendada en su lugar (la pendiente)",
    ),
    (
        "output.choice.becomes.target_time",
        "recomendada en su lugar (el tiempo pedido)",
    ),
    (
        "output.choice.becomes.weight_cost",
        "recomendada en su lugar (el peso del coste)",
    ),
    (
        "output.choice.becomes.weight_energy",
        "recomendada en su lugar (el peso de la energía)",
    ),
    (
        "output.choice.becomes.weight_room",
        "recomendada en su lugar (el peso del espacio)",
    ),
    (
        "output.choice.becomes.weight_time",
        "recomendada en su lugar (el peso del tiempo)",
    ),
    (
        "output.choice.changes_at.battery_energy",
        "sensibilidad a la batería",
    ),
    (
        "output.choice.changes_at.cg_height",
        "sensibilidad a la altura del CG",
    ),
    (
        "output.choice.changes_at.friction_peak",
        "sensibilidad al rozamiento",
    ),
    (
        "output.choice.changes_at.inverter_cost",
        "sensibilidad al coste de un inversor",
    ),
    (
        "output.choice.changes_at.least_range",
        "sensibilidad a la autonomía pedida",
    ),
    ("output.choice.changes_at.mass", "sensibilidad a la masa"),
    (
        "output.choice.changes_at.motor_cost",
        "sensibilidad al coste de un motor",
    ),
    (
        "output.choice.changes_at.motor_power",
        "sensibilidad a la potencia del motor",
    ),
    (
        "output.choice.changes_at.motor_torque",
        "sensibilidad al par del motor",
    ),
    (
        "output.choice.changes_at.start_grade",
        "sensibilidad a la pendiente",
    ),
    (
        "output.choice.changes_at.target_time",
        "sensibilidad al tiempo pedido",
    ),
    (
        "output.choice.changes_at.weight_cost",
        "sensibilidad al peso del coste",
    ),
    (
        "output.choice.changes_at.weight_energy",
        "sensibilidad al peso de la energía",
    ),
    (
        "output.choice.changes_at.weight_room",
        "sensibilidad al peso del espacio",
    ),
    (
        "output.choice.changes_at.weight_time",
        "sensibilidad al peso del tiempo",
    ),
    ("output.choice.cost", "coste relativo"),
    ("output.choice.differentials", "diferenciales"),
    ("output.choice.disconnects", "desacoples"),
    ("output.choice.energy_per_km", "energía por distancia"),
    ("output.choice.feasible", "cumple el encargo"),
    ("output.choice.gear_sets", "juegos de engranajes"),
    ("output.choice.half_shafts", "semiejes"),
    ("output.choice.inverters", "inversores"),
    ("output.choice.limit", "límite de tracción"),
    (
        "output.choice.limit_dry_earth",
        "límite de tracción, camino de tierra seco",
    ),
    ("output.choice.limit_gravel", "límite de tracción, grava"),
    ("output.choice.limit_ice", "límite de tracción, hielo"),
    ("output.choice.limit_snow", "límite de tracción, nieve"),
    (
        "output.choice.limit_wet",
        "límite de tracción, asfalto mojado",
    ),
    (
        "output.choice.limit_wet_concrete",
        "límite de tracción, hormigón mojado",
    ),
    (
        "output.choice.limit_wet_earth",
        "límite de tracción, camino de tierra mojado",
    ),
    ("output.choice.motors", "motores"),
    ("output.choice.on_pareto_front", "en el frente de Pareto"),
    ("output.choice.parts", "piezas"),
    ("output.choice.range", "autonomía"),
    ("output.choice.reason", "juicio"),
    ("output.choice.recommended", "disposición recomendada"),
    (
        "output.choice.room_left",
        "sobra en el eje motriz más estrecho",
    ),
    ("output.choice.room_share", "anchura libre detrás"),
    ("output.choice.score", "puntuación"),
    (
        "output.choice.start_margin",
        "aceleración que queda en la pendiente",
    ),
    ("output.choice.time_to_60_mph", "tiempo hasta 60 mph"),
    ("output.choice.turns_in_place", "gira en el sitio"),
    ("output.choice.volume", "volumen de las unidades"),
    (
        "output.choice.yaw_moment",
        "momento de guiñada de los motores",
    ),
    ("output.cornering.ackermann_angle", "ángulo de Ackermann"),
    (
        "output.cornering.characteristic_speed",
        "velocidad característica",
    ),
    (
        "output.cornering.constant_radius.understeer_gradient",
        "gradiente de subviraje del ensayo de radio constante, hasta 2 m/s²",
    ),
    ("output.cornering.critical_speed", "velocidad crítica"),
    (
        "output.cornering.drive_force",
        "fuerza de tracción que mantiene la velocidad",
    ),
    ("output.cornering.drive_power", "potencia de la batería"),
    (
        "output.cornering.lateral_acceleration",
        "aceleración lateral",
    ),
    ("output.cornering.limit", "qué lo termina"),
    (
        "output.cornering.limit_lateral_acceleration",
        "límite en este radio",
    ),
    (
        "output.cornering.limit_speed",
        "velocidad máxima en este radio",
    ),
    ("output.cornering.max", "mayor momento de guiñada"),
    (
        "output.cornering.sideslip_angle",
        "ángulo de deriva del vehículo",
    ),
    (
        "output.cornering.single_track.lateral_acceleration_gain",
        "aceleración lateral por ángulo de dirección",
    ),
    (
        "output.cornering.single_track.sideslip_angle",
        "ángulo de deriva, modelo de una huella",
    ),
    (
        "output.cornering.single_track.steer_angle",
        "ángulo de dirección, modelo de una huella",
    ),
    (
        "output.cornering.single_track.yaw_rate_gain",
        "velocidad de guiñada por ángulo de dirección",
    ),
    ("output.cornering.steer_angle", "ángulo de dirección"),
    (
        "output.cornering.step_steer.overshoot",
        "escalón de dirección: sobreoscilación de la guiñada",
    ),
    (
        "output.cornering.step_steer.rise_time",
        "escalón de dirección: tiempo de subida de la guiñada",
    ),
    ("output.cornering.turn", "el viraje"),
    (
        "output.cornering.understeer_gradient",
        "gradiente de subviraje",
    ),
    (
        "output.cornering.vectoring.brakes.deceleration",
        "un freno: deceleración si nada mantiene la velocidad",
    ),
    (
        "output.cornering.vectoring.brakes.force",
        "un freno: fuerza en la rueda",
    ),
    (
        "output.cornering.vectoring.brakes.heat",
        "un freno: calor en él",
    ),
    (
        "output.cornering.vectoring.brakes.power",
        "un freno: potencia de la batería para mantener la velocidad",
    ),
    (
        "output.cornering.vectoring.brakes.steer_angle",
        "un freno: ángulo de dirección",
    ),
    (
        "output.cornering.vectoring.brakes.verdict",
        "un freno: ¿es posible?",
    ),
    (
        "output.cornering.vectoring.mixed.brake_force",
        "freno delante, motores detrás: fuerza del freno",
    ),
    (
        "output.cornering.vectoring.mixed.deceleration",
        "freno delante, motores detrás: deceleración si nada mantiene la velocidad",
    ),
    (
        "output.cornering.vectoring.mixed.heat",
        "freno delante, motores detrás: calor en el freno",
    ),
    (
        "output.cornering.vectoring.mixed.motor_force",
        "freno delante, motores detrás: fuerza en cada rueda con motor",
    ),
    (
        "output.cornering.vectoring.mixed.power",
        "freno delante, motores detrás: potencia de la batería",
    ),
    (
        "output.cornering.vectoring.mixed.steer_angle",
        "freno delante, motores detrás: ángulo de dirección",
    ),
    (
        "output.cornering.vectoring.mixed.verdict",
        "freno delante, motores detrás: ¿es posible?",
    ),
    (
        "output.cornering.vectoring.motors.force",
        "dos motores: fuerza en cada rueda",
    ),
    (
        "output.cornering.vectoring.motors.power",
        "dos motores: potencia de la batería",
    ),
    (
        "output.cornering.vectoring.motors.steer_angle",
        "dos motores: ángulo de dirección",
    ),
    (
        "output.cornering.vectoring.motors.verdict",
        "dos motores: ¿es posible?",
    ),
    (
        "output.idle_drag.booster_time_share",
        "tiempo con ambos ejes impulsando",
    ),
    (
        "output.idle_drag.both_axles_above",
        "ambos ejes impulsan desde",
    ),
    ("output.idle_drag.cycle_distance", "distancia del ciclo"),
    ("output.idle_drag.energy_per_km", "consumo"),
    ("output.idle_drag.follows_cycle", "sigue el ciclo"),
    ("output.idle_drag.force_at_wheels", "fuerza en las ruedas"),
    (
        "output.idle_drag.front_torque_share",
        "parte delantera del par",
    ),
    (
        "output.idle_drag.idle_loss_induction",
        "pérdida de un motor de inducción inactivo",
    ),
    (
        "output.idle_drag.idle_loss_per_km",
        "pérdida en motores inactivos",
    ),
    (
        "output.idle_drag.idle_loss_permanent_magnet",
        "pérdida de un motor de imanes inactivo",
    ),
    (
        "output.idle_drag.motor_loss",
        "pérdida en los motores ahora",
    ),
    (
        "output.idle_drag.motor_loss_per_km",
        "pérdida en los motores",
    ),
    ("output.idle_drag.motor_speed", "régimen de los motores"),
    ("output.idle_drag.primary", "quién impulsa"),
    ("output.idle_drag.range", "autonomía"),
    (
        "output.idle_drag.range_lost_to_idle",
        "autonomía perdida por motores inactivos",
    ),
    ("output.idle_drag.road_load", "resistencia al avance"),
    (
        "output.idle_drag.saved_by_split",
        "ahorro del mejor reparto",
    ),
    (
        "output.launch.end_speed",
        "velocidad al final de la arrancada",
    ),
    (
        "output.launch.front_grip_limited_until",
        "los neumáticos delanteros limitan hasta",
    ),
    (
        "output.launch.front_peak_slip",
        "mayor deslizamiento, delante",
    ),
    ("output.launch.front_phases", "qué limita delante"),
    (
        "output.launch.motor_energy",
        "energía en los ejes de los motores, hasta 60 mph",
    ),
    ("output.launch.outcome", "final de la arrancada"),
    (
        "output.launch.quarter_mile_speed",
        "velocidad en el cuarto de milla",
    ),
    (
        "output.launch.quarter_mile_time",
        "tiempo en el cuarto de milla",
    ),
    (
        "output.launch.quarter_mile_time_after_rollout",
        "tiempo en el cuarto de milla, sin rollout",
    ),
    (
        "output.launch.rear_grip_limited_until",
        "los neumáticos traseros limitan hasta",
    ),
    (
        "output.launch.rear_peak_slip",
        "mayor deslizamiento, detrás",
    ),
    ("output.launch.rear_phases", "qué limita detrás"),
    (
        "output.launch.rollout_time",
        "tiempo del primer pie (rollout)",
    ),
    (
        "output.launch.speed_at_time",
        "velocidad en el instante mostrado",
    ),
    ("output.launch.time_to_100_km_h", "tiempo hasta 100 km/h"),
    (
        "output.launch.time_to_100_km_h_after_rollout",
        "tiempo hasta 100 km/h, sin rollout",
    ),
    ("output.launch.time_to_160_km_h", "tiempo hasta 160 km/h"),
    (
        "output.launch.time_to_160_km_h_after_rollout",
        "tiempo hasta 160 km/h, sin rollout",
    ),
    ("output.launch.time_to_60_mph", "tiempo hasta 60 mph"),
    (
        "output.launch.time_to_60_mph_after_rollout",
        "tiempo hasta 60 mph, sin rollout",
    ),
    (
        "output.launch.tyre_heat",
        "calor del deslizamiento, hasta 60 mph",
    ),
    (
        "output.load_transfer.drop_rear",
        "descenso de la carrocería sobre el eje trasero",
    ),
    (
        "output.load_transfer.front_axle_load",
        "carga del eje delantero",
    ),
    (
        "output.load_transfer.front_lift_acceleration",
        "aceleración que levanta el eje delantero",
    ),
    (
        "output.load_transfer.front_load_share",
        "parte delantera de la carga",
    ),
    (
        "output.load_transfer.heave",
        "desplazamiento vertical del CG",
    ),
    (
        "output.load_transfer.pitch_angle",
        "ángulo de cabeceo, morro abajo positivo",
    ),
    (
        "output.load_transfer.rear_axle_load",
        "carga del eje trasero",
    ),
    (
        "output.load_transfer.rear_to_front_ratio",
        "carga trasera entre delantera",
    ),
    (
        "output.load_transfer.rise_front",
        "subida de la carrocería sobre el eje delantero",
    ),
    (
        "output.load_transfer.static_front_axle_load",
        "carga del eje delantero en reposo y en llano",
    ),
    (
        "output.load_transfer.static_rear_axle_load",
        "carga del eje trasero en reposo y en llano",
    ),
    (
        "output.load_transfer.transferred_load",
        "carga que gana el eje trasero frente al reposo en llano",
    ),
    (
        "output.load_transfer.two_to_one_acceleration",
        "aceleración a la que la carga es 2 : 1",
    ),
    (
        "output.motor_split.drive_cost",
        "coste de las unidades motrices",
    ),
    (
        "output.motor_split.drive_mass",
        "masa de las unidades motrices",
    ),
    (
        "output.motor_split.front_load_share_at_limit",
        "parte delantera de la carga en el límite",
    ),
    (
        "output.motor_split.front_load_share_at_rest",
        "parte delantera de la carga en reposo",
    ),
    (
        "output.motor_split.like_motors_limit",
        "límite con el mismo par de cada motor",
    ),
    (
        "output.motor_split.limit_gained",
        "límite ganado frente a menos motores",
    ),
    (
        "output.motor_split.matching_acceleration",
        "aceleración a la que par y carga coinciden",
    ),
    (
        "output.motor_split.motor_power_needed",
        "potencia de un motor que alcanza el límite",
    ),
    (
        "output.motor_split.motor_torque_needed",
        "par de un motor que alcanza el límite",
    ),
    ("output.motor_split.motors", "motores"),
    ("output.motor_split.parts", "piezas"),
    (
        "output.motor_split.time_saved",
        "tiempo ganado a la más rápida con menos motores",
    ),
    (
        "output.motor_split.time_to_60_mph",
        "tiempo hasta 60 mph, adherencia ideal",
    ),
    (
        "output.motor_split.torque_front_share",
        "parte delantera del par de motores iguales",
    ),
    ("output.motor_split.traction_limit", "límite de tracción"),
    (
        "output.motor_split.yaw_moment",
        "momento de guiñada, motores izquierdos contra derechos",
    ),
    (
        "output.motor_split.yaw_moment_gained",
        "momento de guiñada ganado frente a menos motores",
    ),
    (
        "output.packaging.drive_volume",
        "volumen de todas las unidades",
    ),
    (
        "output.packaging.extraordinary",
        "por encima de 16 kW/L, que en el oficio es extraordinario",
    ),
    ("output.packaging.fits", "cabe"),
    (
        "output.packaging.front_left_with_one",
        "sobra delante con una unidad",
    ),
    (
        "output.packaging.front_left_with_two",
        "sobra delante con dos unidades",
    ),
    ("output.packaging.front_room", "espacio en el eje delantero"),
    (
        "output.packaging.front_wheel_reach",
        "alcance de una rueda delantera hacia dentro a tope",
    ),
    (
        "output.packaging.power_density",
        "densidad de potencia del conjunto",
    ),
    (
        "output.packaging.rear_left_with_one",
        "sobra detrás con una unidad",
    ),
    (
        "output.packaging.rear_left_with_two",
        "sobra detrás con dos unidades",
    ),
    ("output.packaging.rear_room", "espacio en el eje trasero"),
    ("output.packaging.reason", "por qué"),
    (
        "output.packaging.room_left",
        "sobra en el eje motriz más estrecho",
    ),
    (
        "output.packaging.swept_area",
        "área que barre una rueda delantera",
    ),
    ("output.packaging.unit_volume", "volumen de una unidad"),
    ("output.packaging.unit_width", "anchura de una unidad"),
    ("output.traction.acceleration", "límite de tracción"),
    (
        "output.traction.front_adhesion_utilisation",
        "adherencia utilizada, delante",
    ),
    (
        "output.traction.front_axle_load",
        "carga del eje delantero en el límite",
    ),
    (
        "output.traction.front_lift_acceleration",
        "aceleración que levanta el eje delantero",
    ),
    (
        "output.traction.front_tractive_force",
        "fuerza de tracción delantera",
    ),
    (
        "output.traction.ideal_front_share_at_rest",
        "parte delantera ideal en reposo",
    ),
    ("output.traction.limited_by", "causa del límite"),
    (
        "output.traction.rear_adhesion_utilisation",
        "adherencia utilizada, detrás",
    ),
    (
        "output.traction.rear_axle_load",
        "carga del eje trasero en el límite",
    ),
    (
        "output.traction.rear_tractive_force",
        "fuerza de tracción trasera",
    ),
    ("output.traction.tractive_force", "fuerza de tracción"),
    (
        "output.traction.two_to_one_acceleration",
        "aceleración a la que la carga es 2 : 1",
    ),
    (
        "output.turn_in_place.available_wheel_torque",
        "par que un motor da a su rueda",
    ),
    (
        "output.turn_in_place.drift_per_turn",
        "deriva cuesta abajo en una vuelta lenta",
    ),
    (
        "output.turn_in_place.drilling_moment",
        "momento de pivotamiento de las huellas que deslizan",
    ),
    (
        "output.turn_in_place.drilling_moment_bound",
        "momento de pivotamiento, cota superior",
    ),
    (
        "output.turn_in_place.driving_moment",
        "momento de las dos ruedas motrices",
    ),
    (
        "output.turn_in_place.energy_per_turn",
        "energía para una vuelta completa",
    ),
    (
        "output.turn_in_place.energy_per_turn_bound",
        "energía para una vuelta completa, cota superior con pivotamiento",
    ),
    ("output.turn_in_place.feasible", "puede girar en el sitio"),
    (
        "output.turn_in_place.friction_used_lengthwise",
        "parte del rozamiento usada a lo largo",
    ),
    (
        "output.turn_in_place.front_patch_length",
        "longitud de la huella, delante",
    ),
    (
        "output.turn_in_place.front_tractive_force_per_wheel",
        "fuerza de tracción, una rueda delantera",
    ),
    (
        "output.turn_in_place.front_wheel_torque",
        "par, una rueda delantera",
    ),
    (
        "output.turn_in_place.full_lock_centre_behind_front",
        "dirección a tope: centro de giro detrás del eje delantero",
    ),
    (
        "output.turn_in_place.full_lock_centre_to_left",
        "dirección a tope: centro de giro a la izquierda",
    ),
    (
        "output.turn_in_place.full_lock_in_place",
        "dirección a tope: gira en el sitio",
    ),
    (
        "output.turn_in_place.full_lock_sweep_radius",
        "dirección a tope: radio del círculo del eje delantero",
    ),
    (
        "output.turn_in_place.heat_per_front_tyre",
        "calor de deslizamiento en un neumático delantero por vuelta",
    ),
    (
        "output.turn_in_place.heat_per_rear_tyre",
        "calor de deslizamiento en un neumático trasero por vuelta",
    ),
    (
        "output.turn_in_place.holding_moment",
        "momento del otro eje, arrastrado de lado",
    ),
    (
        "output.turn_in_place.lateral_scrub_moment",
        "momento si todas las ruedas se arrastraran de lado",
    ),
    (
        "output.turn_in_place.path_radius",
        "radio de la trayectoria del CG",
    ),
    (
        "output.turn_in_place.rear_patch_length",
        "longitud de la huella, detrás",
    ),
    (
        "output.turn_in_place.rear_tractive_force_per_wheel",
        "fuerza de tracción, una rueda trasera",
    ),
    (
        "output.turn_in_place.rear_wheel_torque",
        "par, una rueda trasera",
    ),
    ("output.turn_in_place.reason", "motivo"),
    (
        "output.turn_in_place.resisting_moment",
        "momento resistente",
    ),
    (
        "output.turn_in_place.spin.energy_to_180",
        "energía de los motores hasta 180°",
    ),
    (
        "output.turn_in_place.spin.energy_to_360",
        "energía de los motores hasta 360°",
    ),
    (
        "output.turn_in_place.spin.energy_to_90",
        "energía de los motores hasta 90°",
    ),
    ("output.turn_in_place.spin.outcome", "arranque del giro"),
    (
        "output.turn_in_place.spin.steady_yaw_rate",
        "velocidad de guiñada estacionaria",
    ),
    ("output.turn_in_place.spin.time_to_180", "tiempo hasta 180°"),
    ("output.turn_in_place.spin.time_to_360", "tiempo hasta 360°"),
    ("output.turn_in_place.spin.time_to_90", "tiempo hasta 90°"),
    (
        "output.turn_in_place.spin.time_to_steady",
        "tiempo hasta que la velocidad de guiñada queda dentro del 1 %",
    ),
    (
        "output.turn_in_place.spin.way_off",
        "distancia del CG a donde estaba, tras una vuelta",
    ),
    (
        "output.turn_in_place.tractive_force_per_wheel",
        "fuerza de tracción por rueda, de media",
    ),
    (
        "output.turn_in_place.tread_lost_least",
        "banda perdida por vuelta, extremo inferior",
    ),
    (
        "output.turn_in_place.tread_lost_most",
        "banda perdida por vuelta, extremo superior",
    ),
    (
        "output.turn_in_place.tread_lost_per_turn",
        "banda perdida por vuelta, con un coeficiente de desgaste supuesto",
    ),
    (
        "output.turn_in_place.turning_centre_behind_front_axle",
        "centro de giro tras el eje delantero",
    ),
    (
        "output.turn_in_place.turning_centre_to_left",
        "centro de giro a la izquierda del plano medio",
    ),
    (
        "output.turn_in_place.wear_coefficient",
        "coeficiente de desgaste, una suposición",
    ),
    (
        "output.turn_in_place.wheel_speed_ratio",
        "velocidad de rueda entre velocidad de guiñada",
    ),
    (
        "output.turn_in_place.wheel_torque",
        "par por rueda, de media",
    ),
    (
        "output.turn_in_place.wheel_torque_bound",
        "par medio en rueda, cota superior con pivotamiento",
    ),
    (
        "problem.empty",
        "El escenario está vacío: dé al menos un campo, por ejemplo vehicle.base = \"esker\".",
    ),
    ("problem.field", "{0} no es un campo conocido aquí."),
    (
        "problem.field_near",
        "{0} no es un campo conocido aquí; el más parecido es {1}.",
    ),
    (
        "problem.kind",
        "{0} = {1} no es del tipo debido; se admite: {2}.",
    ),
    ("problem.line", "{0}, línea {1}: {2}: {3}; permitido: {4}"),
    (
        "problem.missing",
        "Falta {0}: délo ({1}), o nombre un vehículo de muestra con vehicle.base.",
    ),
    ("problem.missing_plain", "Falta {0}: délo ({1})."),
    ("problem.no_answer", "{0} = {1}: {2}; se admite: {3}."),
    (
        "problem.not_a_number",
        "no es un número seguido de una unidad",
    ),
    ("problem.quantity", "{0} = «{1}»: {2}; se admite: {3}."),
    (
        "problem.range",
        "{0} = {1} está fuera del intervalo; se admite: {2}.",
    ),
    (
        "problem.two_readings",
        "{0} puede ser {1} o {2}; escriba el que quiere decir",
    ),
    (
        "problem.unknown_unit",
        "«{0}» no es una unidad conocida aquí",
    ),
    ("problem.word", "{0} = «{1}» no se conoce; se admite: {2}."),
    ("problem.wrong_dimension", "{0} es una unidad de {1}"),
    ("question.again", "Preguntar de nuevo"),
    ("question.another", "Probar otra"),
    (
        "question.axes",
        "Ejes vacíos para dibujar: {0} en horizontal, de {1} a {2}; {3} en vertical, de 0 a {4}.",
    ),
    (
        "question.change",
        "Suponga que solo cambia una cosa: {0}, de {1} a {2}. ¿Qué pasa con este valor? {3}",
    ),
    ("question.changed", "El valor pasa de {0} a {1}."),
    ("question.chart", "{0} frente a {1}"),
    ("question.chart_points", "Puntos de la línea: {0}."),
    (
        "question.choice.change.hint",
        "El coste cuenta piezas. Lo que algo vale para usted no es un precio.",
    ),
    (
        "question.choice.change_car.hint",
        "El agarre depende de dónde está el peso; el volumen, de la potencia. ¿Cuál de los dos toca el cambio?",
    ),
    (
        "question.choice.cost",
        "¿Cuánto cuesta la disposición {0}, en la unidad de los costes?",
    ),
    (
        "question.choice.cost.hint",
        "Cuente primero las piezas: hay un diferencial donde un motor mueve dos ruedas.",
    ),
    (
        "question.choice.limit",
        "¿Con qué fuerza puede acelerar la disposición {0} en este suelo?",
    ),
    (
        "question.choice.limit.hint",
        "Acelerar pasa carga al eje trasero. Escriba lo que lleva entonces el eje motriz.",
    ),
    (
        "question.choice.motor_cost",
        "La disposición {0} puede costar {1}. ¿Cuánto puede costar un motor?",
    ),
    (
        "question.choice.motor_cost.hint",
        "Reste el coste de todas las demás piezas y divida entre el número de motores.",
    ),
    (
        "question.choice.order",
        "Los motores son bastante fuertes. ¿Qué disposición arranca con más margen en una pendiente de {0}, cuál con menos, y por qué?",
    ),
    (
        "question.choice.order.front_load",
        "F1R1, luego F1, luego R1. En el límite, los neumáticos delanteros de F1 llevan más carga que los traseros de R1.",
    ),
    (
        "question.choice.order.hint",
        "Tome la carga de cada eje motriz en la pendiente, en el límite. Unos motores fuertes no hacen que los neumáticos agarren más.",
    ),
    (
        "question.choice.order.pushing",
        "R1, luego F1R1, luego F1. Cuesta arriba toda la carga está en las ruedas traseras.",
    ),
    (
        "question.choice.order.rear_load",
        "F1R1, luego R1, luego F1. En el límite, los neumáticos traseros de R1 llevan más carga que los delanteros de F1.",
    ),
    (
        "question.choice.order.torque",
        "F1R1, luego R1, luego F1. Dos motores dan el doble de par, y el par decide.",
    ),
    (
        "question.choice.parts",
        "¿Cuántas piezas tiene la disposición {0}: motores, inversores, reductores, semiejes, diferenciales y desacoples?",
    ),
    (
        "question.choice.parts.hint",
        "Tres por cada motor, dos semiejes por cada eje motriz. El resto depende del eje.",
    ),
    (
        "question.choice.power_for_volume",
        "Las unidades de la disposición {0} pueden ocupar {1} en total. ¿Qué potencia puede tener un motor?",
    ),
    (
        "question.choice.power_for_volume.hint",
        "Cada litro sirve a toda la potencia: sume los litros que un kilovatio ocupa en motor, inversor y reductor.",
    ),
    (
        "question.choice.read_grade",
        "El gráfico es de un vehículo con un motor detrás (R1). ¿En qué pendiente queda una aceleración de {0}?",
    ),
    (
        "question.choice.read_grade.hint",
        "Vaya de la aceleración en horizontal hasta la línea y baje a la pendiente. Estime entre las líneas de la cuadrícula.",
    ),
    (
        "question.choice.refused",
        "¿Qué pasa con la disposición {0} según este pliego?",
    ),
    (
        "question.choice.refused.hint",
        "Pregúntese primero si caben sus unidades. Luego mire qué se pide: ¿qué eje podría hacerlo?",
    ),
    (
        "question.choice.start",
        "¿Qué disposición arranca con más margen en una pendiente de {0}?",
    ),
    (
        "question.choice.start.hint",
        "La pendiente pasa carga atrás, y acelerar también. Pero ¿dónde está la carga en llano?",
    ),
    (
        "question.choice.volume",
        "Disposición {0}: ¿qué volumen tienen todas sus unidades juntas?",
    ),
    (
        "question.choice.volume.hint",
        "Halle el volumen de una unidad: motor, inversor y reductor llevan cada uno toda la potencia.",
    ),
    ("question.close", "a menos de un 1\u{2009}% del valor"),
    ("question.commit", "Confirmar la predicción"),
    (
        "question.cornering.ackermann",
        "A paso de hombre, ¿cuánto giran las ruedas delanteras en este radio?",
    ),
    (
        "question.cornering.ackermann.hint",
        "Ningún neumático deriva aún: las ruedas siguen el círculo. Batalla entre radio, en grados.",
    ),
    (
        "question.cornering.brake_heat",
        "Un freno trasero da este momento de guiñada. ¿Cuánto calor recibe?",
    ),
    (
        "question.cornering.brake_heat.hint",
        "Una fuerza en media vía da el momento. Fuerza por velocidad es potencia.",
    ),
    (
        "question.cornering.change.hint",
        "Escriba el valor como fórmula. ¿Aparece en ella lo que cambia?",
    ),
    (
        "question.cornering.characteristic_speed",
        "¿A qué velocidad necesita este coche el doble del ángulo de Ackermann?",
    ),
    (
        "question.cornering.characteristic_speed.hint",
        "Ahí K·a_y es tan grande como L/R. Sustituya a_y = V²/R.",
    ),
    (
        "question.cornering.motor_force",
        "Dos motores traseros dan este momento de guiñada uno contra otro. ¿Con qué fuerza empuja cada una de sus ruedas?",
    ),
    (
        "question.cornering.motor_force.hint",
        "Cada una de las dos fuerzas tiene media vía como brazo, y ambas giran el coche en el mismo sentido.",
    ),
    (
        "question.cornering.needed_speed",
        "¿A qué velocidad la aceleración lateral en este radio es {0}?",
    ),
    (
        "question.cornering.needed_speed.hint",
        "V²/R es la aceleración lateral. Tome g como 9,81 m/s².",
    ),
    (
        "question.cornering.read_speed",
        "El gráfico es de una curva. ¿A qué velocidad pide una aceleración lateral de {0}?",
    ),
    (
        "question.cornering.read_speed.hint",
        "Vaya de la aceleración en horizontal hasta la línea y baje a la velocidad. El doble de velocidad pide cuatro veces la aceleración.",
    ),
    (
        "question.cornering.speed_lost",
        "Un freno trasero da este momento de guiñada y nada mantiene la velocidad. ¿Con qué deceleración frena el coche?",
    ),
    (
        "question.cornering.speed_lost.hint",
        "La fuerza del freno sale del momento; tiene que frenar todo el coche.",
    ),
    (
        "question.cornering.steer",
        "¿Qué ángulo de dirección necesita el modelo de una huella en este viraje?",
    ),
    (
        "question.cornering.steer.hint",
        "El ángulo de Ackermann y, además, el gradiente de subviraje por la aceleración lateral.",
    ),
    (
        "question.cornering.turn",
        "¿Puede el coche mantener este viraje y, si no, qué lo termina?",
    ),
    (
        "question.cornering.turn.hint",
        "Compare V²/R con la fricción. Después: ¿qué eje tiene menos reserva y se aligera alguna rueda?",
    ),
    (
        "question.cornering.understeer_gradient",
        "¿Cuál es el gradiente de subviraje de este coche?",
    ),
    (
        "question.cornering.understeer_gradient.hint",
        "Para cada eje: su carga en reposo entre la rigidez de deriva de sus dos neumáticos. Delante menos detrás, por cada g.",
    ),
    (
        "question.cornering.wrong_line.hint",
        "Compruebe cada línea por sí sola. ¿Qué debe pasarle si se duplica la velocidad o el radio?",
    ),
    ("question.far", "muchísimo de más o de menos"),
    ("question.field", "Su predicción: {0}"),
    ("question.front_axle", "el eje delantero"),
    ("question.given", "Datos"),
    ("question.height", "{0} con {1}"),
    ("question.hint", "Pista"),
    (
        "question.idle_drag.change.hint",
        "Pregunte qué pérdida toca el cambio: cobre, hierro, rodamientos o el camino.",
    ),
    (
        "question.idle_drag.idle_induction",
        "Un motor de inducción sin corriente gira con el coche. ¿Cuánto pierde a la velocidad dada?",
    ),
    (
        "question.idle_drag.idle_induction.hint",
        "Sin campo quedan solo los rodamientos y el aire; unos van con la velocidad, el otro con su cubo.",
    ),
    (
        "question.idle_drag.idle_magnet",
        "Un motor de imanes permanentes no da par y gira con el coche. ¿Cuánto pierde a la velocidad dada?",
    ),
    (
        "question.idle_drag.idle_magnet.hint",
        "Cada parte vale a la velocidad base. Por encima el campo es más débil, y sujetarlo cuesta cobre.",
    ),
    (
        "question.idle_drag.loses_more",
        "Un motor solo impulsa el coche a velocidad constante. ¿Qué tipo pierde más?",
    ),
    (
        "question.idle_drag.loses_more.hint",
        "Uno debe crear su campo, el otro debe sujetar el suyo a alta velocidad.",
    ),
    (
        "question.idle_drag.motor_speed",
        "¿A qué velocidad gira un motor de este coche a la velocidad dada?",
    ),
    (
        "question.idle_drag.motor_speed.hint",
        "La rueda gira a la velocidad entre el radio; el motor gira más rápido según la relación.",
    ),
    (
        "question.idle_drag.range",
        "Un motor detrás impulsa el coche a velocidad constante. ¿Hasta dónde alcanza la batería?",
    ),
    (
        "question.idle_drag.range.hint",
        "Primero la energía por distancia: avance, pérdidas, otros consumos.",
    ),
    (
        "question.idle_drag.read_speed",
        "El gráfico es de un vehículo. ¿A qué velocidad pierde {0} su motor de imanes permanentes en vacío?",
    ),
    (
        "question.idle_drag.read_speed.hint",
        "Vaya de la potencia en horizontal hasta la línea y baje a la velocidad. Estime entre las líneas de la cuadrícula.",
    ),
    (
        "question.idle_drag.road_load",
        "¿Cuánto vale la resistencia al avance de este coche a la velocidad dada?",
    ),
    (
        "question.idle_drag.road_load.hint",
        "La resistencia del aire va con el cuadrado de la velocidad; la de rodadura es una parte del peso.",
    ),
    (
        "question.idle_drag.sketch_idle_loss",
        "Dibuje cómo varía la pérdida de un motor de imanes permanentes arrastrado con la velocidad del vehículo, de {0} a {1}.",
    ),
    (
        "question.idle_drag.sketch_idle_loss.hint",
        "Una parte de la pérdida en el hierro crece con la velocidad y otra con su cuadrado; los cojinetes añaden la suya.",
    ),
    (
        "question.idle_drag.speed_of_loss",
        "¿A qué velocidad pierde {0} un motor de imanes permanentes sin par?",
    ),
    (
        "question.idle_drag.speed_of_loss.hint",
        "La pérdida crece con la velocidad algo más que en proporción.",
    ),
    (
        "question.idle_drag.steady_energy",
        "Un motor detrás impulsa el coche a velocidad constante. ¿Cuánta energía toma por kilómetro?",
    ),
    (
        "question.idle_drag.steady_energy.hint",
        "Una fuerza es una energía por distancia. Sume las pérdidas y los otros consumos, divididos entre la velocidad.",
    ),
    (
        "question.idle_drag.who_drives",
        "Disposición {0} a velocidad constante, con los motores dados. ¿Qué eje impulsa con la menor pérdida?",
    ),
    (
        "question.idle_drag.who_drives.hint",
        "Pregunte de cada eje qué pierde sin par y qué añadiría despertarlo.",
    ),
    (
        "question.idle_drag.wrong_line.hint",
        "Compruebe cada línea por sí sola: su unidad, y si crece cuando debe.",
    ),
    ("question.inside", "Está dentro de la tolerancia del {0}."),
    (
        "question.later",
        "La figura, los números y el desarrollo del cálculo aparecen después de su predicción.",
    ),
    (
        "question.launch.after_rollout",
        "Un motor detrás (R1), con control de tracción: ¿qué tiempo a 60 mph se declara si el reloj arranca tras el primer pie?",
    ),
    (
        "question.launch.after_rollout.hint",
        "Busque el tiempo desde parado y el tiempo del primer pie, y reste.",
    ),
    (
        "question.launch.change.hint",
        "¿A qué mitad de la salida pertenece el valor cambiado: a la que limita la adherencia o a la que limita la potencia?",
    ),
    (
        "question.launch.motor_energy",
        "Un motor en cada eje (F1R1), con control de tracción: ¿cuánta energía dan los motores hasta 60 mph?",
    ),
    (
        "question.launch.motor_energy.hint",
        "Empiece por la energía cinética del vehículo. Ruedas y rotores, deslizamiento, engranajes, aire y suelo piden algo más.",
    ),
    (
        "question.launch.needed_power",
        "Un motor en cada eje (F1R1), con control de tracción: ¿cuánta potencia debe tener cada motor para pasar de parado a 60 mph en {0}?",
    ),
    (
        "question.launch.needed_power.hint",
        "En cuanto limitan los motores, la energía crece con el tiempo: la energía cinética a 60 mph entre la potencia de ambos motores es más o menos lo que dura esa parte.",
    ),
    (
        "question.launch.order",
        "F1R1, F2 y R2 tienen dos motores iguales cada una. ¿Cuál llega primero a 60 mph, cuál la última, y por qué?",
    ),
    (
        "question.launch.order.front_heavy",
        "F1R1, luego F2, luego R2. El eje delantero lleva tanta carga que sostiene más que el trasero incluso al acelerar.",
    ),
    (
        "question.launch.order.grip_alone",
        "F1R1, luego R2, luego F2. Los neumáticos limitan R2 hasta las 60 mph: su potencia no influye en el tiempo.",
    ),
    (
        "question.launch.order.hint",
        "Busque la fuerza que sostienen los neumáticos motrices y la velocidad a la que la potencia de los motores no da más que esa fuerza. ¿Está por encima de 60 mph?",
    ),
    (
        "question.launch.order.pushing",
        "R2, luego F1R1, luego F2. Las ruedas que empujan agarran más que las que tiran.",
    ),
    (
        "question.launch.order.then_power",
        "F1R1, luego R2, luego F2. A R2 la limitan primero los neumáticos, después los motores.",
    ),
    (
        "question.launch.quarter_after_rollout",
        "Un motor detrás (R1), con control de tracción: ¿qué tiempo del cuarto de milla se declara si el reloj arranca tras el primer pie?",
    ),
    (
        "question.launch.quarter_after_rollout.hint",
        "El primer pie dura unas décimas, apenas más. Busque primero el tiempo largo.",
    ),
    (
        "question.launch.quarter_speed",
        "Un motor en cada eje (F1R1), con control de tracción: ¿a qué velocidad va el vehículo tras un cuarto de milla?",
    ),
    (
        "question.launch.quarter_speed.hint",
        "Con potencia constante, el cubo de la velocidad crece con la distancia.",
    ),
    (
        "question.launch.quarter_time",
        "Un motor en cada eje (F1R1), con control de tracción: ¿cuánto dura un cuarto de milla?",
    ),
    (
        "question.launch.quarter_time.hint",
        "En la mayor parte del camino limita la potencia. Ahí la energía es potencia por tiempo.",
    ),
    (
        "question.launch.read_time",
        "El gráfico es de una salida. ¿Cuándo alcanza el vehículo {0}?",
    ),
    (
        "question.launch.read_time.hint",
        "Vaya de la velocidad en horizontal hasta la línea y baje al tiempo. Estime entre las líneas de la cuadrícula.",
    ),
    (
        "question.launch.rollout",
        "Un motor en cada eje (F1R1), con control de tracción: ¿cuánto dura el primer pie?",
    ),
    (
        "question.launch.rollout.hint",
        "Un pie es 0,3048 m. La aceleración no está ahí al instante: los neumáticos necesitan algo de camino, los muelles algo de tiempo.",
    ),
    (
        "question.launch.time_to_100",
        "Un motor detrás (R1), con control de tracción: ¿cuánto tarda el vehículo de parado a 100 km/h?",
    ),
    (
        "question.launch.time_to_100.hint",
        "Mientras limita la adherencia, la aceleración es el límite de tracción de la propulsión trasera.",
    ),
    (
        "question.launch.time_to_160",
        "Un motor en cada eje (F1R1), con control de tracción: ¿cuánto tarda el vehículo de parado a 160 km/h?",
    ),
    (
        "question.launch.time_to_160.hint",
        "La adherencia limita solo al principio. Después, la energía que los motores dan en un segundo es su potencia.",
    ),
    (
        "question.launch.time_to_60",
        "Un motor en cada eje (F1R1), con control de tracción: ¿cuánto tarda el vehículo de parado a 60 mph?",
    ),
    (
        "question.launch.time_to_60.hint",
        "Divida la salida: primero la fricción fija la fuerza, después la potencia. Busque la velocidad en la que se encuentran.",
    ),
    ("question.less", "disminuye"),
    ("question.line_right", "correcta"),
    ("question.line_yours", "su línea"),
    ("question.lines", "La línea correcta: {0}. Su línea: {1}."),
    (
        "question.load_transfer.change.hint",
        "Busque el valor que cambia entre los símbolos de la ecuación de la carga.",
    ),
    (
        "question.load_transfer.front_load",
        "El vehículo acelera con {0}; un valor negativo es frenada. ¿Cuánto vale la carga del eje delantero?",
    ),
    (
        "question.load_transfer.front_load.hint",
        "Al frenar, la fuerza de inercia apunta hacia delante. Tome momentos respecto de las huellas traseras.",
    ),
    (
        "question.load_transfer.front_share",
        "El vehículo acelera con {0}. ¿Qué parte de la carga está sobre el eje delantero?",
    ),
    (
        "question.load_transfer.front_share.hint",
        "Empiece por la parte en reposo. La carga que se desplaza, dividida por el peso, es el cambio.",
    ),
    (
        "question.load_transfer.heavier_axle",
        "El coche acelera a {0}; un valor negativo es frenar. ¿Qué eje lleva más carga?",
    ),
    (
        "question.load_transfer.heavier_axle.hint",
        "Dos cosas deciden: las cargas en reposo y la carga que transfiere la aceleración. Halle cada una por separado.",
    ),
    (
        "question.load_transfer.lift_height",
        "¿A qué altura debe estar el centro de gravedad (CG) para que el eje delantero se despegue del suelo a {0}?",
    ),
    (
        "question.load_transfer.lift_height.hint",
        "Cuando el eje delantero no lleva nada, el peso y la fuerza de inercia juntos deben apuntar a la huella trasera.",
    ),
    (
        "question.load_transfer.ratio_acceleration",
        "¿A qué aceleración lleva el eje trasero {0} veces la carga del delantero?",
    ),
    (
        "question.load_transfer.ratio_acceleration.hint",
        "Según la aceleración, ambas cargas son rectas, y su suma sigue siendo el peso.",
    ),
    (
        "question.load_transfer.read_load",
        "El gráfico es de un vehículo. ¿Cuánto soporta su eje trasero con {0}?",
    ),
    (
        "question.load_transfer.read_load.hint",
        "Suba de la aceleración a la línea y vaya en horizontal a la carga. Estime entre las líneas de la cuadrícula.",
    ),
    (
        "question.load_transfer.rear_load",
        "El coche acelera a {0}. ¿Cuánto vale la carga de su eje trasero?",
    ),
    (
        "question.load_transfer.rear_load.hint",
        "La fuerza de inercia actúa a la altura del CG. Deben equilibrar su momento unas cargas por eje separadas por una batalla.",
    ),
    (
        "question.load_transfer.sketch_rear_load",
        "Dibuje cómo varía la carga del eje trasero con la aceleración, de {0} a {1}.",
    ),
    (
        "question.load_transfer.sketch_rear_load.hint",
        "En reposo, la posición del CG reparte el peso. Cada paso más de aceleración transfiere tanta carga como el anterior.",
    ),
    (
        "question.load_transfer.transfer_acceleration",
        "¿Con qué aceleración han pasado {0} de carga del eje delantero al trasero?",
    ),
    (
        "question.load_transfer.transfer_acceleration.hint",
        "La carga desplazada es proporcional a la aceleración.",
    ),
    (
        "question.load_transfer.transferred",
        "El vehículo acelera con {0}. ¿Cuánta carga ha pasado del eje delantero al trasero?",
    ),
    (
        "question.load_transfer.transferred.hint",
        "Al par de la fuerza de inercia y la fuerza de tracción lo equilibra un par de cargas por eje.",
    ),
    (
        "question.load_transfer.two_to_one",
        "¿Con qué aceleración lleva el eje trasero el doble de carga que el delantero?",
    ),
    (
        "question.load_transfer.two_to_one.hint",
        "Entonces el eje delantero lleva un tercio del peso. Busque lo que debe abandonarlo.",
    ),
    (
        "question.load_transfer.wrong_line.hint",
        "Los dos ejes juntos soportan el peso, también al acelerar. Compruebe además las unidades.",
    ),
    ("question.more", "aumenta"),
    (
        "question.motor_split.change.hint",
        "La coincidencia es cuestión de geometría. Pregúntese si el valor cambiado forma parte de ella.",
    ),
    (
        "question.motor_split.like_limit",
        "Disposición {0}, y cada motor da el mismo par: ¿cuál es la mayor aceleración antes de que patine un neumático?",
    ),
    (
        "question.motor_split.like_limit.hint",
        "El número de motores fija el reparto de la fuerza. Busque para cada eje dónde se agota su fricción; vale el menor valor.",
    ),
    (
        "question.motor_split.match_height",
        "¿A qué altura debe estar el centro de gravedad para que en F1R2 coincidan par y carga con {0}?",
    ),
    (
        "question.motor_split.match_height.hint",
        "Un centro de gravedad más alto desplaza más carga con la misma aceleración. La carga que debe desplazarse está fijada.",
    ),
    (
        "question.motor_split.match_place",
        "¿A qué distancia detrás del eje delantero debe estar el centro de gravedad para que en F1R2 coincidan par y carga con {0}?",
    ),
    (
        "question.motor_split.match_place.hint",
        "Vaya hacia atrás: con esa aceleración un tercio de la carga está delante. Sume lo que se ha desplazado.",
    ),
    (
        "question.motor_split.matching",
        "Un motor delante y dos iguales detrás (F1R2): ¿con qué aceleración coinciden las partes de par y de carga?",
    ),
    (
        "question.motor_split.matching.hint",
        "Tres motores iguales dan un tercio del par delante. ¿Con qué aceleración está un tercio de la carga delante?",
    ),
    (
        "question.motor_split.order",
        "Cada motor da el mismo par. ¿Qué disposición tiene el límite más alto antes de que patine un neumático, cuál el más bajo, y por qué?",
    ),
    (
        "question.motor_split.order.count",
        "F1R2, luego F2R1, luego F1R1. Tres motores sostienen siempre más que dos.",
    ),
    (
        "question.motor_split.order.front_heavy",
        "F1R1, luego F2R1, luego F1R2. En el límite, la mitad del par delante es lo que mejor se ajusta a la carga, y dos tercios mejor que un tercio.",
    ),
    (
        "question.motor_split.order.half",
        "F1R1, luego F1R2, luego F2R1. En el límite, la mitad del par delante es lo que mejor se ajusta a la carga, y un tercio mejor que dos tercios.",
    ),
    (
        "question.motor_split.order.hint",
        "Las partes delanteras del par son 1/2, 1/3 y 2/3. Compárelas con la parte delantera de la carga en el límite.",
    ),
    (
        "question.motor_split.order.rest",
        "F1R1, luego F1R2, luego F2R1. Lo que se ajusta lo decide la carga en reposo, sea cual sea la aceleración.",
    ),
    (
        "question.motor_split.order.third",
        "F1R2, luego F1R1, luego F2R1. En el límite, un tercio del par delante se ajusta a la carga mejor que la mitad.",
    ),
    (
        "question.motor_split.power_needed",
        "Motores iguales, uno en cada eje (F1R1): ¿cuánta potencia debe poder dar cada uno para seguir en el límite de tracción hasta {0}?",
    ),
    (
        "question.motor_split.power_needed.hint",
        "La potencia es fuerza por velocidad. ¿Qué eje pide más fuerza?",
    ),
    (
        "question.motor_split.read_friction",
        "El gráfico es de un vehículo con motores iguales, uno delante y dos detrás (F1R2). ¿Cuánto rozamiento necesita para acelerar con {0}?",
    ),
    (
        "question.motor_split.read_friction.hint",
        "Vaya de la aceleración en horizontal hasta la línea y baje al rozamiento. Donde la línea se dobla, empieza a limitar el otro eje.",
    ),
    (
        "question.motor_split.share_at_limit",
        "Un motor en cada eje (F1R1), cada uno da lo que su eje puede usar: ¿qué parte de la carga está delante en el límite de tracción?",
    ),
    (
        "question.motor_split.share_at_limit.hint",
        "Con todas las ruedas en su límite, la aceleración apenas depende de la disposición. Búsquela, y después la carga que desplaza.",
    ),
    (
        "question.motor_split.share_at_rest",
        "¿Qué parte de la carga está delante con el vehículo parado?",
    ),
    (
        "question.motor_split.share_at_rest.hint",
        "Tome momentos respecto del eje trasero.",
    ),
    (
        "question.motor_split.torque_needed",
        "Motores iguales, uno en cada eje (F1R1): ¿cuánto par debe poder dar cada uno para llegar al límite de tracción?",
    ),
    (
        "question.motor_split.torque_needed.hint",
        "Lo fija el eje más cargado. Vaya de la fuerza en el suelo, por el radio de rueda, los engranajes y las pérdidas, hasta el motor.",
    ),
    (
        "question.motor_split.two_or_three",
        "Cada motor da el mismo par. ¿Cuál tiene aquí el límite más alto: dos motores (F1R1) o tres (F1R2)?",
    ),
    (
        "question.motor_split.two_or_three.hint",
        "En suelo resbaladizo se desplaza poca carga, así que cuenta el reparto en reposo. Donde los neumáticos agarran, cuenta el que hay al acelerar.",
    ),
    (
        "question.motor_split.wrong_line.hint",
        "Pregunte en cada línea qué sería de ella si el centro de gravedad estuviera más alto o más atrás.",
    ),
    (
        "question.nine_heights",
        "una línea a lo largo de todo el eje, por sus nueve tiradores",
    ),
    (
        "question.nothing_drawn",
        "Todavía no se ha dibujado ninguna línea. Dibuje {0}.",
    ),
    ("question.order", "orden y razón"),
    ("question.outside", "Está fuera de la tolerancia del {0}."),
    (
        "question.packaging.change.hint",
        "Pregunte de qué partes se compone el valor y a cuál toca el cambio.",
    ),
    (
        "question.packaging.drive_volume",
        "Disposición {0}: ¿qué volumen tienen todas sus unidades juntas?",
    ),
    (
        "question.packaging.drive_volume.hint",
        "Motores iguales: halle una unidad y después cuéntelas.",
    ),
    (
        "question.packaging.fits",
        "Disposición {0}: ¿caben sus unidades, y dónde no?",
    ),
    (
        "question.packaging.fits.hint",
        "Halle la anchura de una unidad y el espacio en cada eje. Dos unidades necesitan una separación.",
    ),
    (
        "question.packaging.front_reach",
        "¿Cuánto alcanza una rueda delantera hacia dentro de su propio centro, a tope?",
    ),
    (
        "question.packaging.front_reach.hint",
        "Desde arriba la rueda es un rectángulo. Gírelo y mire adónde va su esquina interior.",
    ),
    (
        "question.packaging.front_room",
        "¿Cuánto espacio hay entre las ruedas delanteras para unidades?",
    ),
    (
        "question.packaging.front_room.hint",
        "En cada lado se restan el alcance de la rueda, la holgura, y los largueros y la suspensión.",
    ),
    (
        "question.packaging.needed_density",
        "¿Qué densidad de potencia debe tener el motor solo para que la unidad ocupe {0}?",
    ),
    (
        "question.packaging.needed_density.hint",
        "Reste primero los volúmenes del inversor y los engranajes. Lo que queda es del motor.",
    ),
    (
        "question.packaging.power_density",
        "¿Qué densidad de potencia tiene el conjunto?",
    ),
    (
        "question.packaging.power_density.hint",
        "Es menor que la menor de las tres. Tome cualquier potencia y sume los volúmenes.",
    ),
    (
        "question.packaging.read_angle",
        "El gráfico es de un vehículo. ¿Cuánto pueden girar sus ruedas delanteras para que queden {0} de espacio entre ellas?",
    ),
    (
        "question.packaging.read_angle.hint",
        "Vaya del espacio en horizontal hasta la línea y baje al ángulo. Estime entre las líneas de la cuadrícula.",
    ),
    (
        "question.packaging.steer_limit",
        "¿Cuánto pueden girar las ruedas delanteras para que queden {0} de espacio entre ellas?",
    ),
    (
        "question.packaging.steer_limit.hint",
        "Del espacio sale el alcance que puede tener una rueda; del alcance sale el ángulo.",
    ),
    (
        "question.packaging.unit_volume",
        "¿Qué volumen tiene una unidad: motor, inversor, engranajes y diferencial juntos?",
    ),
    (
        "question.packaging.unit_volume.hint",
        "Cada pieza lleva toda la potencia, así que cada una ocupa su volumen. ¿Qué se puede sumar, densidades o volúmenes?",
    ),
    (
        "question.packaging.unit_width",
        "¿Qué anchura tiene la caja exterior de una unidad?",
    ),
    (
        "question.packaging.unit_width.hint",
        "Primero el volumen de las piezas, después el de la caja que las contiene, después su longitud y altura.",
    ),
    (
        "question.packaging.wider_axle",
        "¿Qué eje tiene más espacio para unidades?",
    ),
    (
        "question.packaging.wider_axle.hint",
        "Deciden dos cosas: la vía y cuánto alcanzan las ruedas hacia dentro.",
    ),
    (
        "question.packaging.wrong_line.hint",
        "Pregunte en cada línea qué ocupa sitio y cuántas veces está.",
    ),
    ("question.rear_axle", "el eje trasero"),
    ("question.same", "sigue igual"),
    (
        "question.sketch_how",
        "Dibuje la línea con lápiz, ratón o dedo, o mueva sus nueve tiradores con las flechas del teclado.",
    ),
    (
        "question.spot",
        "Aquí hay una solución para: {0}. Una línea tiene un error y las siguientes están calculadas a partir de él. ¿Qué línea es?",
    ),
    ("question.spotted", "La línea {0} debería ser: {1}. {2}"),
    (
        "question.tolerance",
        "Es correcto un valor que difiera de la respuesta un {0} como máximo.",
    ),
    (
        "question.tolerance_find",
        "Es correcto un valor cuyo resultado difiera de lo pedido un {0} como máximo.",
    ),
    (
        "question.tolerance_line",
        "Es correcta una línea que se aparta en promedio no más del {0} del mayor valor correcto.",
    ),
    ("question.too_little", "{0} de menos"),
    ("question.too_much", "{0} de más"),
    (
        "question.traction.change.hint",
        "Pregúntese qué ejes son motrices y si el cambio les da más carga, menos o la misma.",
    ),
    (
        "question.traction.faster_drive",
        "Un motor delante (F1) o uno detrás (R1): ¿cuál puede acelerar más aquí?",
    ),
    (
        "question.traction.faster_drive.hint",
        "Dos cosas deciden: lo que lleva cada eje en reposo y lo que la aceleración hace con esa carga.",
    ),
    (
        "question.traction.force",
        "Disposición {0}: ¿cuánto vale la fuerza de tracción en el límite de tracción?",
    ),
    (
        "question.traction.force.hint",
        "Coeficiente de fricción por carga de los ejes motrices, en el límite y no en reposo.",
    ),
    (
        "question.traction.ideal_share",
        "En reposo, ¿qué parte del par en el eje delantero usaría todos los neumáticos por igual?",
    ),
    (
        "question.traction.ideal_share.hint",
        "Los neumáticos se usan por igual cuando la fuerza se reparte como la carga.",
    ),
    (
        "question.traction.limit",
        "Disposición {0}: ¿cuál es la mayor aceleración que permiten sus neumáticos?",
    ),
    (
        "question.traction.limit.hint",
        "La carga del eje motriz depende de la misma aceleración que se pide. Escriba la fuerza como adherencia por esa carga y resuelva.",
    ),
    (
        "question.traction.needed_friction",
        "Disposición {0}: ¿qué adherencia máxima debe ofrecer el suelo para una aceleración de {1}?",
    ),
    (
        "question.traction.needed_friction.hint",
        "Halle la carga del eje motriz a esa aceleración. La fuerza entre esa carga es la adherencia que necesita.",
    ),
    (
        "question.traction.one_side",
        "La fricción es {0} a la izquierda y {1} a la derecha. Un motor con diferencial abierto mueve el eje trasero (R1): ¿cuál es la mayor aceleración?",
    ),
    (
        "question.traction.one_side.hint",
        "Un diferencial abierto da a ambas ruedas el mismo par. ¿Qué rueda lo fija?",
    ),
    (
        "question.traction.order",
        "¿Qué disposición tiene aquí el límite de tracción más alto, cuál el más bajo, y por qué? Cada motor da el par indicado.",
    ),
    (
        "question.traction.order.front_heavy",
        "F1R1, luego F1, luego R1. Los neumáticos limitan F1 y R1, y los delanteros llevan más carga incluso en el límite.",
    ),
    (
        "question.traction.order.hint",
        "Busque para cada eje motriz dos fuerzas: la que sostienen sus neumáticos en el límite y la que da su motor. Cuenta la menor.",
    ),
    (
        "question.traction.order.motor",
        "F1R1, luego R1, luego F1. A R1 lo limita su motor, a F1 sus neumáticos.",
    ),
    (
        "question.traction.order.pushing",
        "R1, luego F1R1, luego F1. Las ruedas que empujan agarran más que las que tiran.",
    ),
    (
        "question.traction.order.tyres",
        "F1R1, luego R1, luego F1. Los neumáticos limitan R1 y F1, y los traseros llevan más carga en el límite.",
    ),
    (
        "question.traction.read_friction",
        "El gráfico es de un vehículo con un motor detrás (R1). ¿Cuánto rozamiento necesita para acelerar con {0}?",
    ),
    (
        "question.traction.read_friction.hint",
        "Vaya de la aceleración en horizontal hasta la línea y baje al rozamiento. Estime entre las líneas de la cuadrícula.",
    ),
    (
        "question.traction.rear_load",
        "Un motor mueve el eje trasero (R1). ¿Cuánto vale la carga del eje trasero en el límite de tracción?",
    ),
    (
        "question.traction.rear_load.hint",
        "Busque primero el límite: él fija la carga, y la carga fija el límite.",
    ),
    (
        "question.traction.sketch_limit",
        "Disposición {0}: dibuje cómo varía la aceleración máxima con el coeficiente de rozamiento, de {1} a {2}.",
    ),
    (
        "question.traction.sketch_limit.hint",
        "La carga que pasa al eje motriz le permite empujar más; la que lo abandona, menos. Al final puede que el motor no tenga más par.",
    ),
    (
        "question.traction.uphill",
        "Disposición {0} en una pendiente de {1}: ¿cuál es la mayor aceleración que permiten los neumáticos?",
    ),
    (
        "question.traction.uphill.hint",
        "La pendiente desplaza carga al eje trasero ya en reposo y consume una parte de la fuerza.",
    ),
    (
        "question.traction.what_limits",
        "Disposición F1R1 con reparto fijo: el eje delantero da el {0} de la fuerza de tracción. ¿Qué limita la aceleración?",
    ),
    (
        "question.traction.what_limits.hint",
        "Compare la parte delantera de la fuerza con la parte delantera de la carga en el límite, no en reposo.",
    ),
    (
        "question.traction.wrong_line.hint",
        "La última línea debe dar el rozamiento del suelo, porque los neumáticos patinan. ¿Desde qué línea se desvía?",
    ),
    (
        "question.turn_in_place.change.hint",
        "Escriba el valor como un producto: rozamiento, carga, una parte que depende de la forma del coche, un brazo de palanca. ¿Cuál de ellos cambia?",
    ),
    (
        "question.turn_in_place.drift",
        "¿En qué pendiente deriva el coche {0} cuesta abajo en una vuelta completa y lenta en el sitio?",
    ),
    (
        "question.turn_in_place.drift.hint",
        "Todo el rozamiento está ya usado. Un empuje de lado solo gira su dirección: responde en proporción a la deriva sobre el deslizamiento.",
    ),
    (
        "question.turn_in_place.drilling",
        "¿Cuánto vale como máximo el momento de pivotamiento de las cuatro huellas?",
    ),
    (
        "question.turn_in_place.drilling.hint",
        "La huella de una rueda tiene el área N/p. La cota es un tercio del rozamiento por la raíz de esa área.",
    ),
    (
        "question.turn_in_place.energy",
        "¿Cuánta energía va a los neumáticos y al suelo en una vuelta completa en el sitio?",
    ),
    (
        "question.turn_in_place.energy.hint",
        "Fuerza de rozamiento por el camino que desliza cada huella. El camino es más largo que el círculo que siguen las ruedas, porque además giran sobre su eje.",
    ),
    (
        "question.turn_in_place.feasible",
        "Disposición {0}: ¿puede el coche girar con ella en el sitio aquí, y por qué?",
    ),
    (
        "question.turn_in_place.feasible.hint",
        "Primero: ¿qué ejes pueden mover sus dos ruedas en sentidos opuestos? Después: ¿qué deben arrastrar esas ruedas consigo?",
    ),
    (
        "question.turn_in_place.harder_axle",
        "¿Las ruedas de qué eje deben empujar más al girar en el sitio?",
    ),
    (
        "question.turn_in_place.harder_axle.hint",
        "Más carga es más rozamiento, y el centro de giro queda más cerca del eje más cargado. ¿Qué hace eso con la dirección de su deslizamiento?",
    ),
    (
        "question.turn_in_place.lengthwise",
        "El coche gira en el sitio con las cuatro ruedas motrices. ¿Qué parte del rozamiento apunta a lo largo de las ruedas?",
    ),
    (
        "question.turn_in_place.lengthwise.hint",
        "Mire el coche desde arriba: la batalla, la vía y la diagonal entre dos ruedas forman un triángulo.",
    ),
    (
        "question.turn_in_place.needed_friction",
        "¿Con qué rozamiento al deslizar pide el giro en el sitio un par medio de {0} en cada rueda?",
    ),
    (
        "question.turn_in_place.needed_friction.hint",
        "El par crece en proporción al rozamiento. Hállelo primero para un valor.",
    ),
    (
        "question.turn_in_place.read_torque",
        "El gráfico es de un vehículo que gira en el sitio. ¿Qué par necesita de media cada rueda donde el rozamiento por deslizamiento es {0}?",
    ),
    (
        "question.turn_in_place.read_torque.hint",
        "Suba del rozamiento a la línea y vaya en horizontal al par. Estime entre las líneas de la cuadrícula.",
    ),
    (
        "question.turn_in_place.tread",
        "Toma {0} como coeficiente de desgaste. ¿Cuánta banda pierden los cuatro neumáticos juntos en una vuelta completa?",
    ),
    (
        "question.turn_in_place.tread.hint",
        "Primero la energía de la vuelta. El caucho pesa 1150 kg/m³.",
    ),
    (
        "question.turn_in_place.wheel_torque",
        "El coche gira en el sitio con las cuatro ruedas motrices. ¿Cuánto vale el par medio en una rueda?",
    ),
    (
        "question.turn_in_place.wheel_torque.hint",
        "Cada huella usa todo su rozamiento, pero solo pide par la parte que apunta a lo largo de la rueda.",
    ),
    (
        "question.turn_in_place.wrong_line.hint",
        "Mire en cada línea su lugar en el vehículo: ¿qué eje, cuántas ruedas, qué brazo?",
    ),
    (
        "question.unit",
        "Un número sin unidad se toma en {0}; también se leen otras unidades.",
    ),
    ("question.verdict", "Usted dijo {0}. Son {1}: {2}."),
    (
        "question.verdict_find",
        "Usted dijo {0}. Resulta: {1}, {2} en lugar de {3}, {4}. La respuesta es {5}.",
    ),
    (
        "question.verdict_line",
        "En promedio su línea se aparta {0}. Donde más se aparta es con {1}: usted dibujó {2} y lo correcto es {3}.",
    ),
    (
        "question.verdict_nothing",
        "Usted dijo {0}. Con ese valor, el coche no puede estar como dice la pregunta. La respuesta es {1}.",
    ),
    ("question.verdict_right", "Usted dijo: {0}. Es correcto."),
    (
        "question.verdict_wrong",
        "Usted dijo: {0}. Lo correcto es: {1}.",
    ),
    (
        "question.why.all_tyres",
        "μ·g necesita el rozamiento de los cuatro neumáticos. Aquí mueve un solo eje, y lleva una parte del peso.",
    ),
    (
        "question.why.arm",
        "La fuerza de inercia tiene el brazo h, y las cargas por eje la equilibran sobre la batalla L.",
    ),
    (
        "question.why.arm_axle",
        "b es la distancia del centro de gravedad al eje trasero: lo que a deja de la batalla.",
    ),
    (
        "question.why.axle",
        "Un eje soporta tanto más cuanto más lejos está el centro de gravedad del otro: en la carga delantera está b.",
    ),
    (
        "question.why.base_speed",
        "La potencia es par por velocidad, así que la velocidad base es potencia entre par.",
    ),
    (
        "question.why.both_wheels",
        "Las dos ruedas del eje ocupan sitio, la izquierda y la derecha.",
    ),
    (
        "question.why.box_fill",
        "Una unidad motriz no llena su caja: la caja es mayor que el volumen de lo que hay dentro.",
    ),
    (
        "question.why.field",
        "Por encima de la velocidad base se debilita el campo: baja cuando sube la velocidad.",
    ),
    (
        "question.why.front_sign",
        "La aceleración quita carga al eje delantero, y con ella fuerza: el denominador es 1 + μ·h/L.",
    ),
    (
        "question.why.gearing",
        "Con los engranajes el motor gira i veces más rápido que la rueda.",
    ),
    (
        "question.why.geometry",
        "Las ruedas delanteras se giran según la batalla entre el radio de la trayectoria, no entre su diámetro.",
    ),
    (
        "question.why.gradient",
        "Un ángulo de deriva de los neumáticos delanteros pide más dirección; uno de los traseros, menos.",
    ),
    (
        "question.why.height",
        "Un centro de gravedad más alto traslada más carga, y la coincidencia llega con menos aceleración: h divide.",
    ),
    (
        "question.why.lever",
        "El par es la fuerza por su brazo, el radio de la rueda.",
    ),
    (
        "question.why.magnet",
        "Un imán no se puede apagar: su campo recorre el hierro también cuando el motor no da par.",
    ),
    (
        "question.why.mass",
        "Una masa no es una fuerza. El peso es la masa por g.",
    ),
    (
        "question.why.mean",
        "La media de dos fuerzas es la mitad de su suma.",
    ),
    (
        "question.why.ratio",
        "Se pregunta por el eje trasero, así que su carga está encima de la raya.",
    ),
    (
        "question.why.side",
        "Al acelerar, la carga pasa al eje trasero y deja el delantero.",
    ),
    (
        "question.why.slide_arm",
        "Las huellas traseras están a L − x detrás del centro de giro; x es la distancia a las delanteras.",
    ),
    (
        "question.why.square",
        "La aceleración lateral crece con el cuadrado de la velocidad.",
    ),
    (
        "question.why.static",
        "La parte del par sale del número de motores, no de la carga en reposo.",
    ),
    (
        "question.why.two_units",
        "Dos unidades motrices ocupan el doble de ancho que una.",
    ),
    (
        "question.why.two_wheels",
        "Dos ruedas comparten la carga del eje: cada una agarra con la mitad.",
    ),
    (
        "question.why.understeer",
        "Donde el gradiente de subviraje es mayor que cero, en marcha hace falta más dirección, no menos.",
    ),
    (
        "question.why.whole_unit",
        "El inversor y los engranajes ocupan sitio junto al motor.",
    ),
    ("question.wrong_line", "línea con el error"),
    ("reason.at_full_lock", "Las ruedas están a tope."),
    ("reason.both_always", "ambos ejes comparten siempre"),
    (
        "reason.both_too_narrow",
        "los dos ejes son demasiado estrechos para sus unidades",
    ),
    (
        "reason.cannot_start_on_grade",
        "no puede arrancar en la pendiente",
    ),
    ("reason.cannot_turn_in_place", "no puede girar en el sitio"),
    (
        "reason.cannot_vector_torque",
        "ningún eje tiene un motor por rueda",
    ),
    ("reason.does_not_fit", "sus unidades no caben"),
    (
        "reason.drive_too_weak",
        "Los motores no pueden mantener esta velocidad.",
    ),
    (
        "reason.front_and_rear_slip",
        "patinan los neumáticos delanteros y traseros",
    ),
    (
        "reason.front_first",
        "primero el delantero, el trasero si conviene",
    ),
    ("reason.front_lift", "se levanta el eje delantero"),
    (
        "reason.front_slides",
        "Los neumáticos delanteros no tienen más agarre: el coche se sale hacia fuera.",
    ),
    ("reason.front_slip", "patinan los neumáticos delanteros"),
    (
        "reason.front_too_narrow",
        "el eje delantero es demasiado estrecho para sus unidades",
    ),
    (
        "reason.launch_air_lifts",
        "El aire levanta las ruedas delanteras.",
    ),
    ("reason.launch_done", "Se pasaron todas las marcas."),
    (
        "reason.launch_no_grip",
        "Los neumáticos no pueden dar la fuerza que mueve el coche aquí.",
    ),
    (
        "reason.launch_time_over",
        "Se agotó el tiempo simulado, dos minutos.",
    ),
    (
        "reason.launch_too_weak",
        "Los motores no tienen fuerza para mover el coche aquí.",
    ),
    ("reason.launch_top_speed", "El coche no va más deprisa."),
    ("reason.meets_brief", "cumple el encargo"),
    ("reason.misses_target_time", "tarda demasiado hasta 60 mph"),
    ("reason.motor_torque", "los motores no tienen más par"),
    (
        "reason.motor_torque_too_small",
        "Los motores dan menos par que el que oponen los neumáticos.",
    ),
    (
        "reason.no_counter_rotation",
        "Ningún eje puede mover sus dos ruedas en sentidos opuestos: un solo motor gira ambas hacia el mismo lado.",
    ),
    (
        "reason.no_end",
        "Hasta donde se ha calculado, nada lo termina.",
    ),
    ("reason.one_axle", "un eje impulsa"),
    (
        "reason.pair_holds_itself",
        "Las dos ruedas motrices también deben sujetar su propio eje contra la fuerza lateral; lo que queda de su rozamiento no gira el coche en el sitio.",
    ),
    ("reason.range_too_short", "no llega bastante lejos"),
    (
        "reason.rear_first",
        "primero el trasero, el delantero si conviene",
    ),
    (
        "reason.rear_slides",
        "Los neumáticos traseros no tienen más agarre: la zaga se va.",
    ),
    ("reason.rear_slip", "patinan los neumáticos traseros"),
    (
        "reason.rear_too_narrow",
        "el eje trasero es demasiado estrecho para sus unidades",
    ),
    (
        "reason.sides_too_different",
        "Los lados agarran tan distinto que el centro de giro queda fuera de las ruedas.",
    ),
    (
        "reason.spin_drifts",
        "Gira y deriva sin cesar cuesta abajo.",
    ),
    (
        "reason.spin_leaves_place",
        "Gira alrededor de un punto que no está entre sus ruedas y se va.",
    ),
    (
        "reason.spin_never_settles",
        "No llega a ser estacionario en el minuto simulado.",
    ),
    (
        "reason.spin_never_starts",
        "No empieza nunca: los neumáticos aguantan a los motores.",
    ),
    (
        "reason.spin_settles",
        "Arranca hasta un giro estacionario en el sitio.",
    ),
    ("reason.tips_over", "El coche vuelca."),
    ("reason.turn_held", "El viraje se mantiene."),
    (
        "reason.undriven_axle_holds",
        "Las dos ruedas motrices no pueden arrastrar de lado el otro eje; mientras patinan, el coche solo oscila alrededor de ese eje.",
    ),
    ("reason.units_fit", "todas las unidades caben"),
    ("reason.way_beyond_grip", "Los neumáticos no lo aguantan."),
    (
        "reason.way_beyond_motors",
        "Los motores son demasiado débiles.",
    ),
    (
        "reason.way_needs_a_pair",
        "Hace falta un motor por rueda en este eje, y esta disposición no lo tiene.",
    ),
    (
        "reason.way_no_turn",
        "El propio viraje no se puede mantener.",
    ),
    (
        "reason.way_possible",
        "Los neumáticos y las máquinas pueden.",
    ),
    (
        "reason.wheel_spins",
        "La rueda motriz interior soporta muy poca carga y patina.",
    ),
    (
        "reason.wheels_driven_apart",
        "Los motores mueven las ruedas de un lado contra las del otro y tienen par para ello.",
    ),
    (
        "reason.wheels_driven_apart_torque_unknown",
        "Los motores mueven las ruedas de un lado contra las del otro; no se preguntó si tienen par para ello.",
    ),
    ("script.copied", "Copiado."),
    (
        "script.refused",
        "Esta página o este navegador no lo permite.",
    ),
    (
        "script.restarted",
        "Este elemento se detuvo y se ha iniciado de nuevo con sus valores.",
    ),
    ("script.saved", "Guardado como {0}."),
    (
        "script.scenario",
        "No se pudo leer el escenario: debe ser JSON de 1 MB como máximo.",
    ),
    (
        "script.stopped",
        "Este elemento se detuvo; se muestra la última imagen. Vuelva a cargar la página para iniciarlo de nuevo.",
    ),
    (
        "script.unavailable",
        "El elemento vivo no pudo iniciarse aquí; esta es su imagen fija.",
    ),
    ("site.all_pages", "Contenido"),
    ("site.answer", "Respuesta."),
    ("site.answer_and_working", "Respuesta y desarrollo"),
    ("site.beside", "Página anterior y siguiente"),
    ("site.check_case", "Caso publicado"),
    ("site.check_difference", "Diferencia"),
    ("site.check_here", "Aquí"),
    ("site.check_ids", "Comprobación"),
    ("site.check_label", "Cómo se sabe"),
    ("site.check_published", "Publicado"),
    ("site.check_source", "Fuente"),
    ("site.check_tolerance", "Tolerancia"),
    ("site.course_answers", "Respuestas"),
    ("site.course_count", "{0} preguntas"),
    ("site.course_key", "Hoja de respuestas"),
    ("site.course_lesson", "Plan de clase"),
    ("site.course_plan", "Plan de clase"),
    ("site.course_questions", "Preguntas"),
    ("site.course_topic", "Tema"),
    (
        "site.disclaimer",
        "Para la enseñanza y una primera comparación. No sustituye el trabajo de un ingeniero habilitado; prevalecen la ley local y las instrucciones del fabricante del vehículo.",
    ),
    ("site.embed_classic", "Script, todo en un archivo"),
    ("site.embed_copied", "Copiado."),
    ("site.embed_copy", "Copiar"),
    ("site.embed_frame", "Marco"),
    ("site.embed_image", "Imagen fija"),
    ("site.embed_module", "Script, como módulo"),
    (
        "site.embed_no_script",
        "El generador necesita un script. Sin él, tome el marco de un tema y ponga la dirección de este sitio en lugar de example.org/axlewright.",
    ),
    ("site.embed_save", "Guardar la figura"),
    ("site.embed_topic", "Tema"),
    ("site.group_reference", "Referencia"),
    ("site.group_start", "Empiece aquí"),
    ("site.group_teach", "Enseñar"),
    ("site.group_topics", "Temas"),
    ("site.group_use", "Usar"),
    ("site.interface_default", "Por defecto"),
    ("site.interface_help", "Qué hace"),
    ("site.interface_kind", "Tipo"),
    ("site.interface_name", "Nombre"),
    ("site.interface_schema", "Esquema JSON"),
    ("site.interface_takes", "Admite"),
    ("site.interface_topic", "Tema"),
    ("site.interface_topics", "Temas"),
    (
        "site.invented",
        "Todos los vehículos mostrados aquí son inventados; ninguno representa un coche real.",
    ),
    ("site.lesson_discuss", "Comentar."),
    (
        "site.lesson_example",
        "Recorrer paso a paso el ejemplo de la página; abrir un número en el elemento y encontrar allí el mismo paso.",
    ),
    ("site.lesson_explore", "Explorar con el elemento."),
    ("site.lesson_minutes", "Minutos"),
    (
        "site.lesson_open",
        "Plantear la pregunta inicial. Reunir respuestas en la pizarra sin juzgarlas todavía.",
    ),
    (
        "site.lesson_practice",
        "Cada estudiante responde solo las preguntas de práctica de la página, con una predicción antes.",
    ),
    ("site.lesson_predict", "Predecir."),
    ("site.lesson_total", "en total"),
    ("site.lesson_what", "Qué se hace"),
    (
        "site.licence",
        "De uso libre bajo la licencia MIT o la Apache 2.0.",
    ),
    (
        "site.new_version",
        "Hay una nueva versión de estas páginas.",
    ),
    ("site.new_version_take", "Usarla"),
    ("site.new_window", "Se abre en una ventana nueva"),
    ("site.no_questions", "Este tema aún no tiene preguntas."),
    (
        "site.no_script",
        "Este elemento necesita script, que aquí está desactivado.",
    ),
    ("site.pages", "Páginas"),
    (
        "site.practice_how",
        "Responda antes de mirar: primero estime, después calcule. Los números salen de una semilla, así que todos tienen los mismos.",
    ),
    ("site.question_number", "Pregunta {0}"),
    ("site.search", "Buscar"),
    (
        "site.search_none",
        "No se encontró nada. Pruebe otra palabra o una parte de ella.",
    ),
    ("site.skip", "Ir al contenido"),
    ("site.source_equations", "Ecuaciones"),
    ("site.source_used", "Usada por"),
    ("site.source_values", "Valores publicados"),
    ("site.surface", "Superficie"),
    ("site.surface_known", "Cómo lo sabemos"),
    ("site.surface_memory", "de memoria"),
    ("site.surface_peak", "Adherencia máxima"),
    ("site.surface_quoted", "citado en otro texto"),
    ("site.surface_sliding", "Rozamiento al deslizar"),
    ("site.symbol", "Símbolo"),
    ("site.symbol_inputs", "Entradas"),
    ("site.symbol_name", "Qué representa"),
    ("site.symbol_unit", "Unidad"),
    (
        "source.adhesion",
        "J. Y. Wong, Theory of Ground Vehicles, tabla 1.3 (citada): rozamiento al deslizar",
    ),
    (
        "source.choice",
        "Media ponderada de partes, mejor entre propio; pesos y costes son valores por defecto inventados. Lo que hace cada disposición viene de los temas.",
    ),
    (
        "source.drilling",
        "Cota: fórmula de Gough (de memoria). Huella que desliza: deducida, presión uniforme",
    ),
    (
        "source.idle_drag",
        "Derivado: pérdidas cuadráticas en el par; flujo inversamente proporcional a la velocidad por encima de la velocidad base",
    ),
    (
        "source.launch",
        "Ecuación del movimiento, integrada desde el reposo (Dormand y Prince, orden 5)",
    ),
    (
        "source.load_transfer",
        "Jazar, Vehicle Dynamics: Theory and Application, cap. 2, ec. 2.121–2.122",
    ),
    (
        "source.motor_split",
        "Equilibrio de fuerzas y momentos; los motores iguales reparten el par según su número",
    ),
    (
        "source.packaging",
        "Los volúmenes de piezas que llevan la misma potencia se suman; geometría de una rueda que gira sobre su propio centro.",
    ),
    (
        "source.planar",
        "Modelo plano de dos huellas: equilibrio de fuerzas y del momento de guiñada en régimen estacionario",
    ),
    (
        "source.single_track",
        "T. D. Gillespie, Fundamentals of Vehicle Dynamics, cap. 6: modelo de una huella (de memoria)",
    ),
    ("source.spin", "Leído de la simulación del modelo plano"),
    (
        "source.squat",
        "Carrocería sobre dos muelles independientes, inercia de cabeceo m·a·b; práctica habitual, sin fuente",
    ),
    ("source.statics", "Equilibrio de fuerzas y momentos"),
    (
        "source.traction",
        "Wong, Theory of Ground Vehicles, cap. 3; Gillespie, Fundamentals of Vehicle Dynamics, cap. 2",
    ),
    (
        "source.turn_in_place",
        "Deducido: el rozamiento de Coulomb se opone a la velocidad de deslizamiento de cada huella",
    ),
    (
        "source.vectoring",
        "Deducido: una diferencia de fuerzas por media vía es un momento",
    ),
    (
        "source.wear",
        "Ajustado a Giechaskiel et al., Sustainability 16(2) 522, 2024 (leído); intervalo según Grosch 2008 (de memoria); el uso del rozamiento en la conducción corriente es una suposición",
    ),
    (
        "starter.intro",
        "Una línea que empieza con # es un comentario; quite el # para fijar ese campo.",
    ),
    (
        "step.acceleration_gain",
        "aceleración lateral por ángulo de dirección",
    ),
    (
        "step.ackermann_angle",
        "ángulo de Ackermann, el de dirección a paso de hombre",
    ),
    (
        "step.after_rollout",
        "el reloj arranca después del primer pie",
    ),
    (
        "step.against_found",
        "giro contra la cota, por el equilibrio de fuerzas y momentos",
    ),
    ("step.apparent_mass", "masa aparente con ruedas y rotores"),
    ("step.available", "par que un motor da a su rueda"),
    (
        "step.axle_copper",
        "cobre de un eje, por su par al cuadrado",
    ),
    (
        "step.axle_fixed",
        "pérdida de un eje que no depende de su par",
    ),
    (
        "step.base_speed",
        "velocidad base, sobre la que se debilita el campo",
    ),
    (
        "step.battery_energy",
        "energía de la batería: avance, cambio de energía cinética, motores, engranajes, frenos, otros consumos",
    ),
    ("step.bearing_loss", "rodamientos y ventilación"),
    ("step.best_share", "pérdida mínima: c_f·T_f = c_r·T_r"),
    (
        "step.booster_share",
        "parte del tiempo de impulso en que impulsan ambos ejes",
    ),
    (
        "step.both_above",
        "fuerza desde la que ambos ejes juntos pierden menos que uno: allí los motores dan T_2",
    ),
    (
        "step.brake_deceleration",
        "deceleración si nada compensa el freno",
    ),
    ("step.brake_force", "fuerza de la única rueda frenada"),
    ("step.brake_heat", "calor en el freno"),
    (
        "step.brake_power",
        "potencia de la batería que compensa el freno",
    ),
    (
        "step.braking_torque",
        "par con que pueden frenar los motores",
    ),
    (
        "step.centre",
        "centro de giro: las fuerzas laterales se equilibran",
    ),
    (
        "step.centre_even",
        "centro de giro: en el medio, porque ambos ejes llevan lo mismo",
    ),
    (
        "step.centre_rolls",
        "centro de giro: sobre el eje cuyas ruedas solo ruedan",
    ),
    (
        "step.cg_to_rear",
        "distancia del CG por delante del eje trasero",
    ),
    (
        "step.changes_at",
        "cambio a partir del cual se recomienda otra disposición, como parte (valores en SI)",
    ),
    (
        "step.characteristic_speed",
        "velocidad a la que el ángulo de dirección es el doble del de Ackermann",
    ),
    ("step.cost", "coste de la disposición"),
    (
        "step.critical_speed",
        "velocidad por encima de la cual el coche no mantiene el rumbo",
    ),
    ("step.cycle_distance", "distancia del ciclo"),
    ("step.drag", "resistencia aerodinámica"),
    (
        "step.drift",
        "deriva cuesta abajo en una vuelta lenta, a primer orden en la pendiente",
    ),
    (
        "step.drift_across",
        "fuerza que responde a una deriva de 1 m por radián a través del coche",
    ),
    (
        "step.drift_along",
        "fuerza que responde a una deriva de 1 m por radián a lo largo del coche",
    ),
    (
        "step.drilling",
        "momento de pivotamiento de las dos huellas del eje mientras deslizan",
    ),
    (
        "step.drilling_as_bound",
        "la huella apenas desliza, así que solo se conoce la cota",
    ),
    (
        "step.drilling_bound",
        "cota superior del momento de pivotamiento del eje: huellas solo torcidas",
    ),
    (
        "step.drilling_bound_sum",
        "cota superior del momento de pivotamiento de todas las huellas",
    ),
    (
        "step.drilling_sum",
        "momento de pivotamiento de todas las huellas",
    ),
    ("step.drive_cost", "coste de todas las unidades motrices"),
    (
        "step.drive_force",
        "fuerza de tracción a partir del par de todos los motores en las ruedas",
    ),
    ("step.drive_mass", "masa de todas las unidades motrices"),
    (
        "step.drive_power",
        "potencia de la batería, con la velocidad media de las ruedas motrices",
    ),
    ("step.drive_volume", "volumen de todas las unidades"),
    ("step.drop_rear", "descenso sobre el eje trasero"),
    (
        "step.end_speed",
        "velocidad al final: leída en la simulación",
    ),
    (
        "step.energy",
        "energía perdida al deslizar en una vuelta completa",
    ),
    (
        "step.energy_bound",
        "energía de una vuelta si la cota resistiera todo el tiempo",
    ),
    (
        "step.energy_per_distance",
        "energía del ciclo por su distancia",
    ),
    ("step.energy_per_km", "energía por distancia"),
    ("step.flux", "flujo como parte del pleno"),
    ("step.force", "fuerza de tracción que pide esta aceleración"),
    ("step.force_against", "fuerza de una rueda contra la cota"),
    ("step.force_at_wheels", "fuerza en las ruedas"),
    (
        "step.force_front",
        "fuerza de tracción de una rueda delantera",
    ),
    ("step.force_mean", "fuerza de tracción media por rueda"),
    (
        "step.force_per_wheel",
        "fuerza de tracción por rueda: la parte de su rozamiento que apunta a lo largo de la rueda",
    ),
    ("step.force_rear", "fuerza de tracción de una rueda trasera"),
    (
        "step.force_rest",
        "fuerza de tracción de una rueda que rueda: lo que deja el otro eje",
    ),
    ("step.front_force", "fuerza de tracción del eje delantero"),
    (
        "step.front_lift",
        "aceleración a la que el eje delantero ya no lleva nada",
    ),
    ("step.front_load", "carga del eje delantero"),
    (
        "step.front_reach",
        "alcance de una rueda delantera hacia dentro de su centro, a tope",
    ),
    ("step.front_share", "parte delantera de la carga"),
    ("step.front_torque_share", "parte delantera del par"),
    (
        "step.front_unaccelerated",
        "carga del eje delantero a velocidad constante",
    ),
    ("step.front_use", "adherencia que utiliza el eje delantero"),
    (
        "step.grip",
        "fuerza de tracción de un eje que patina: toda la adherencia que tiene",
    ),
    (
        "step.grip_until",
        "último instante en que limita este eje la adherencia y no el motor: leído en la simulación",
    ),
    (
        "step.heat",
        "energía de deslizamiento en un neumático por vuelta",
    ),
    ("step.heave", "desplazamiento vertical del CG"),
    (
        "step.ideal_share",
        "parte delantera ideal de la fuerza en reposo: la parte delantera de la carga",
    ),
    (
        "step.idle_induction",
        "un motor de inducción sin corriente: solo rodamientos",
    ),
    ("step.idle_loss_per_km", "pérdida en motores sin par"),
    (
        "step.idle_magnet",
        "un motor de imanes sin par: hierro, debilitamiento del campo, rodamientos",
    ),
    ("step.iron_loss", "pérdida en el hierro con flujo pleno"),
    (
        "step.lateral_acceleration",
        "aceleración lateral del viraje",
    ),
    (
        "step.lateral_limit",
        "aceleración lateral del viraje más rápido que se mantiene",
    ),
    (
        "step.lateral_scrub",
        "momento si cada huella se arrastrara justo de lado",
    ),
    ("step.left_with_one", "lo que sobra con una unidad"),
    ("step.left_with_two", "lo que sobra con dos unidades"),
    (
        "step.lengthwise",
        "parte del rozamiento que apunta a lo largo de las ruedas",
    ),
    ("step.lift_front", "sustentación en el eje delantero"),
    ("step.lift_rear", "sustentación en el eje trasero"),
    (
        "step.like_motors",
        "límite cuando cada motor da el mismo par: ecuación del movimiento, resuelta con la adherencia y las cargas por eje",
    ),
    (
        "step.limit_all",
        "límite de la tracción total: cada eje da todo lo que tiene, así que la transferencia de carga se compensa",
    ),
    (
        "step.limit_fixed_front",
        "límite con reparto fijo: patinan antes los neumáticos delanteros",
    ),
    (
        "step.limit_fixed_rear",
        "límite con reparto fijo: patinan antes los neumáticos traseros",
    ),
    (
        "step.limit_front",
        "límite de la tracción delantera: el eje motriz pierde carga",
    ),
    (
        "step.limit_gained",
        "límite de tracción ganado frente a la mejor disposición comparada con menos motores",
    ),
    (
        "step.limit_lift",
        "límite: el eje delantero se despega del suelo",
    ),
    (
        "step.limit_rear",
        "límite de la tracción trasera: el eje motriz gana carga",
    ),
    ("step.limit_speed", "velocidad de ese viraje"),
    (
        "step.lock_found",
        "dirección a tope: el movimiento que menos potencia pierde deslizando",
    ),
    (
        "step.lock_sweep",
        "dirección a tope: distancia del eje delantero al centro de giro",
    ),
    (
        "step.matching",
        "aceleración a la que la parte delantera de la carga es la del par",
    ),
    ("step.mixed_brake", "fuerza de la rueda delantera frenada"),
    ("step.mixed_heat", "calor en el freno delantero"),
    ("step.mixed_motor", "fuerza en cada rueda trasera"),
    ("step.mixed_power", "potencia de la batería para ambos"),
    (
        "step.motion_all",
        "límite cuando cada eje da todo lo que tiene: ecuación del movimiento, resuelta con la adherencia y las cargas por eje",
    ),
    (
        "step.motion_motor",
        "ecuación del movimiento, resuelta con los motores en su par",
    ),
    (
        "step.motion_slip",
        "ecuación del movimiento, resuelta junto con la adherencia y las cargas por eje de abajo",
    ),
    (
        "step.motor_energy",
        "energía de los motores: movimiento del coche y de sus piezas giratorias, trabajo contra la resistencia del aire, la rodadura y la pendiente, calor del deslizamiento",
    ),
    ("step.motor_loss", "pérdida de todos los motores"),
    (
        "step.motor_loss_per_km",
        "pérdida en los motores por distancia",
    ),
    (
        "step.motor_pair_force",
        "fuerza en cada rueda, hacia delante fuera y hacia atrás dentro",
    ),
    (
        "step.motor_pair_power",
        "un motor impulsa y el otro devuelve; el accionamiento pierde una parte en ambos sentidos",
    ),
    ("step.motor_speed", "régimen de los motores"),
    ("step.motors", "motores: delante y detrás"),
    (
        "step.other_holds",
        "momento con que el otro eje resiste a que lo arrastren de lado",
    ),
    (
        "step.overshoot",
        "mayor velocidad de guiñada sobre la estacionaria",
    ),
    (
        "step.pair_drives",
        "lo máximo que dan las dos ruedas motrices alrededor de su propio eje",
    ),
    (
        "step.parts",
        "piezas: motor, inversor y engranajes por cada motor, dos semiejes por cada eje motriz, un diferencial donde un motor mueve dos ruedas",
    ),
    ("step.parts_total", "piezas de la disposición"),
    (
        "step.patch_length",
        "longitud de una huella tan ancha como el neumático",
    ),
    ("step.path_radius", "distancia del CG al centro de giro"),
    (
        "step.peak_slip",
        "mayor deslizamiento de este eje: leído en la simulación",
    ),
    ("step.pitch", "ángulo de cabeceo, morro abajo positivo"),
    ("step.power_density", "densidad de potencia del conjunto"),
    (
        "step.power_needed",
        "mayor potencia del motor que más empuja, en el camino hasta la velocidad pedida: de su fuerza y de la velocidad allí",
    ),
    ("step.range", "autonomía"),
    (
        "step.range_lost",
        "más autonomía si los motores sin par no perdieran nada, lo que toma E_0",
    ),
    ("step.range_of_layout", "autonomía con la batería"),
    ("step.ratio", "carga trasera entre carga delantera"),
    (
        "step.reach",
        "momento de guiñada de las fuerzas longitudinales, izquierda contra derecha, y de lo que ganan o pierden las transversales",
    ),
    ("step.rear_force", "fuerza de tracción del eje trasero"),
    ("step.rear_load", "carga del eje trasero"),
    (
        "step.rear_reach",
        "alcance de una rueda trasera hacia dentro de su centro",
    ),
    (
        "step.rear_unaccelerated",
        "carga del eje trasero a velocidad constante",
    ),
    ("step.rear_use", "adherencia que utiliza el eje trasero"),
    (
        "step.resisting",
        "momento de las fuerzas laterales respecto del centro de giro",
    ),
    ("step.rise_front", "subida sobre el eje delantero"),
    (
        "step.rise_time",
        "desde la mitad del giro de dirección hasta nueve décimos de la guiñada estacionaria",
    ),
    (
        "step.road_load",
        "resistencia del aire, de rodadura y de pendiente",
    ),
    ("step.room", "espacio entre las ruedas"),
    (
        "step.room_left",
        "lo que sobra en el eje motriz más estrecho",
    ),
    (
        "step.room_share",
        "parte del espacio en el eje trasero que no ocupa ninguna unidad",
    ),
    ("step.same_force", "la misma en cada rueda"),
    (
        "step.saved_by_split",
        "ahorro frente al mismo par de cada motor, que toma E_v",
    ),
    ("step.score", "puntuación: media ponderada de las partes"),
    ("step.shaft_torque", "par en los ejes de los motores"),
    (
        "step.share",
        "parte: el mejor que cumple el encargo entre el propio, o al revés donde más es mejor",
    ),
    (
        "step.shift",
        "carga que el par motor de un eje rígido pasa de una rueda a la otra, en proporción a la fuerza",
    ),
    (
        "step.sideslip",
        "ángulo de deriva del vehículo con el de deriva al que los neumáticos traseros mantienen el viraje",
    ),
    (
        "step.single_sideslip",
        "ángulo de deriva del modelo de una huella",
    ),
    (
        "step.single_steer",
        "ángulo de dirección del modelo de una huella",
    ),
    (
        "step.slide_along",
        "deslizamiento a lo largo del coche por radián",
    ),
    (
        "step.slide_front",
        "velocidad de deslizamiento de una huella delantera entre velocidad de guiñada",
    ),
    ("step.slide_in_all", "deslizamiento total por radián"),
    (
        "step.slide_rear",
        "velocidad de deslizamiento de una huella trasera entre velocidad de guiñada",
    ),
    (
        "step.slope_angle",
        "ángulo de la cuesta a partir de la pendiente",
    ),
    (
        "step.speed_at_time",
        "velocidad en el instante mostrado: leída en la simulación",
    ),
    (
        "step.speed_ratio",
        "velocidad de rueda entre velocidad de guiñada: lo que ponen las ruedas es lo que quita el deslizamiento",
    ),
    (
        "step.speed_ratio_even",
        "velocidad de rueda entre velocidad de guiñada: los momentos se equilibran",
    ),
    (
        "step.speed_ratio_rolls",
        "velocidad de rueda entre velocidad de guiñada: la fijan las ruedas que ruedan",
    ),
    (
        "step.spin_energy",
        "energía de los motores: movimiento, calor de deslizamiento y subida",
    ),
    ("step.spin_settles", "tiempo leído de la simulación"),
    (
        "step.spin_steady",
        "velocidad de guiñada al final de la simulación",
    ),
    (
        "step.spin_time",
        "ángulo entre la velocidad de guiñada media de la simulación",
    ),
    ("step.spin_way_off", "desplazamiento del CG en línea recta"),
    (
        "step.split_force",
        "fuerza de una rueda a lo largo del coche",
    ),
    (
        "step.split_force_front",
        "valor medio de la fuerza de las ruedas delanteras",
    ),
    (
        "step.split_force_rear",
        "valor medio de la fuerza de las ruedas traseras",
    ),
    (
        "step.split_found",
        "el movimiento que menos potencia pierde deslizando",
    ),
    ("step.split_grip", "rozamiento de una huella"),
    ("step.split_slide", "deslizamiento de una huella por radián"),
    (
        "step.static_front",
        "carga del eje delantero en reposo y en llano",
    ),
    (
        "step.static_rear",
        "carga del eje trasero en reposo y en llano",
    ),
    (
        "step.steer",
        "ángulo de dirección con el de deriva al que los neumáticos delanteros mantienen el viraje",
    ),
    ("step.surface_energy", "energía en proporción al rozamiento"),
    ("step.surface_torque", "par en proporción al rozamiento"),
    (
        "step.swept_area",
        "área que barre una rueda delantera de tope a tope",
    ),
    (
        "step.test_gradient",
        "gradiente de subviraje del ensayo de radio constante: cambio del ángulo de dirección entre cambio de la aceleración lateral",
    ),
    (
        "step.time_saved",
        "tiempo ganado a la disposición comparada más rápida con menos motores",
    ),
    (
        "step.time_to_distance",
        "tiempo: distancia entre la velocidad media de la arrancada",
    ),
    (
        "step.time_to_speed",
        "tiempo: cantidad de movimiento entre la fuerza de tracción media menos la resistencia media, ambas sumadas a lo largo de la arrancada",
    ),
    ("step.torque", "par medio por rueda"),
    ("step.torque_bound", "par medio en rueda contra la cota"),
    ("step.torque_front", "par de una rueda delantera"),
    (
        "step.torque_needed",
        "par del motor que más empuja en el límite, según la fuerza que debe dar",
    ),
    ("step.torque_rear", "par de una rueda trasera"),
    (
        "step.torque_share",
        "parte delantera del par de motores iguales",
    ),
    (
        "step.transfer",
        "carga que gana el eje trasero frente al reposo en llano",
    ),
    (
        "step.trap_speed",
        "velocidad allí: la que da la media de todas las fuerzas en ese tiempo",
    ),
    (
        "step.tread_least",
        "banda perdida con el menor coeficiente del intervalo",
    ),
    (
        "step.tread_lost",
        "banda perdida en una vuelta, los cuatro neumáticos",
    ),
    (
        "step.tread_most",
        "banda perdida con el mayor coeficiente del intervalo",
    ),
    (
        "step.two_to_one",
        "aceleración a la que el eje trasero lleva el doble que el delantero",
    ),
    (
        "step.tyre_heat",
        "calor del deslizamiento, delante y detrás: fuerza por velocidad de deslizamiento, sumada",
    ),
    (
        "step.understeer_gradient",
        "gradiente de subviraje: carga entre rigidez de deriva de dos neumáticos, delante menos detrás",
    ),
    (
        "step.unit_volume",
        "volumen de una unidad: motor, inversor, engranajes con diferencial",
    ),
    (
        "step.unit_width",
        "anchura de la caja exterior de la unidad",
    ),
    (
        "step.wear_calibrated",
        "coeficiente que desgasta la masa medida en un kilómetro",
    ),
    ("step.wear_car", "masa del coche medio de las medidas"),
    (
        "step.wear_drag",
        "fuerza que pierde el deslizamiento en la conducción corriente",
    ),
    ("step.wear_given", "coeficiente de desgaste dado"),
    ("step.weight", "peso"),
    (
        "step.wheel_half_diagonal",
        "media diagonal de la rueda, vista desde arriba",
    ),
    (
        "step.yaw_gain",
        "velocidad de guiñada por ángulo de dirección",
    ),
    (
        "step.yaw_gained",
        "momento de guiñada ganado frente a la mejor disposición comparada con menos motores",
    ),
    (
        "step.yaw_of_layout",
        "mayor momento de guiñada que los motores añaden en el viraje de su tema",
    ),
    (
        "step.yaw_pair",
        "momento de guiñada: una rueda de un par de ruedas empuja y la otra tira, cada una con su motor o su adherencia, lo que sea menor",
    ),
    ("surface.asphalt_dry", "asfalto u hormigón secos"),
    ("surface.asphalt_wet", "asfalto mojado"),
    ("surface.concrete_wet", "hormigón mojado"),
    ("surface.earth_dry", "camino de tierra seco"),
    ("surface.earth_wet", "camino de tierra mojado"),
    ("surface.gravel", "grava"),
    ("surface.ice", "hielo"),
    ("surface.short.asphalt_dry", "asfalto seco"),
    ("surface.short.asphalt_wet", "asfalto mojado"),
    ("surface.short.concrete_wet", "hormigón mojado"),
    ("surface.short.earth_dry", "tierra seca"),
    ("surface.short.earth_wet", "tierra mojada"),
    ("surface.short.gravel", "grava"),
    ("surface.short.ice", "hielo"),
    ("surface.short.snow", "nieve"),
    ("surface.snow", "nieve compacta"),
    (
        "talk.allowed.choices",
        "dos valores o más, y otras tantas palabras",
    ),
    ("talk.allowed.list", "una lista de textos"),
    ("talk.allowed.question", "uno de value, largest y smallest"),
    (
        "talk.allowed.steps",
        "de 1 a 500 pasos, cada uno una tabla [[steps]]",
    ),
    ("talk.allowed.table", "una tabla"),
    ("talk.allowed.text", "un texto"),
    ("talk.form", "{0}: «{1}» no se puede decir: {2}."),
    (
        "talk.gone",
        "Con estas entradas no hay valor para esta frase.",
    ),
    ("talk.in_head", "Cabecera de la charla: {0}"),
    ("talk.in_step", "Paso {0}: {1}"),
    ("talk.ui.add", "Añadir"),
    ("talk.ui.answer", "Respuesta: {0}."),
    ("talk.ui.back", "Atrás"),
    ("talk.ui.camera", "Ante la cámara"),
    ("talk.ui.clean", "Solo la imagen"),
    ("talk.ui.clear", "Borrar todo"),
    ("talk.ui.clear_paper", "Transparente"),
    ("talk.ui.colour", "Color del lápiz"),
    ("talk.ui.dark", "Oscuro"),
    ("talk.ui.forward", "Adelante"),
    ("talk.ui.ink", "Dibujar"),
    ("talk.ui.ink_front", "azul"),
    ("talk.ui.ink_inertia", "violeta"),
    ("talk.ui.ink_ink", "tinta"),
    ("talk.ui.ink_rear", "rojo"),
    ("talk.ui.ink_tractive", "verde"),
    ("talk.ui.keys", "Teclas"),
    (
        "talk.ui.keys_list",
        "→, Av Pág, espacio: adelante; ←, Re Pág: atrás; Inicio, Fin: primer y último paso; W: y si; R: volver a la charla; P: lápiz; E: goma; U: deshacer; N: nota; C: solo la imagen; F: pantalla completa",
    ),
    ("talk.ui.large", "Letra grande"),
    ("talk.ui.last", "Este es el último paso."),
    ("talk.ui.next", "A continuación"),
    ("talk.ui.no_note", "Sin nota."),
    ("talk.ui.note", "Nota"),
    ("talk.ui.notes_open", "Nota"),
    ("talk.ui.one_more", "Un voto más para {0}"),
    ("talk.ui.pen", "Lápiz"),
    ("talk.ui.predicted", "Predicho: {0}."),
    ("talk.ui.prediction", "Su predicción"),
    ("talk.ui.presenter", "Ventana del orador"),
    ("talk.ui.print", "Imprimir el resumen"),
    ("talk.ui.refused", "Esta charla no se puede mostrar. {0}"),
    ("talk.ui.restore", "Volver a la charla"),
    ("talk.ui.rubber", "Goma"),
    ("talk.ui.save", "Guardar la figura"),
    ("talk.ui.screen", "Pantalla completa"),
    ("talk.ui.show_answer", "Mostrar la respuesta"),
    (
        "talk.ui.source",
        "Una charla es un archivo TOML o JSON de 1 MB como máximo. {0}",
    ),
    ("talk.ui.speaker", "Orador"),
    ("talk.ui.step", "Paso {0} de {1}"),
    ("talk.ui.steps", "Pasos"),
    (
        "talk.ui.stopped",
        "Este paso no se puede mostrar; la última imagen se queda.",
    ),
    ("talk.ui.take", "Llevarse"),
    ("talk.ui.tall", "9 : 16"),
    ("talk.ui.time", "Tiempo desde el inicio"),
    ("talk.ui.tools", "Herramientas"),
    ("talk.ui.transcript", "La charla como texto"),
    ("talk.ui.undo", "Deshacer"),
    ("talk.ui.what", "¿Y si…?"),
    ("talk.ui.wide", "16 : 9"),
    ("talk.value", "{0}: «{1}» no es un valor de este paso."),
    (
        "talk.value_near",
        "{0}: «{1}» no es un valor de este paso; el más parecido es «{2}».",
    ),
    (
        "talk.whose",
        "Todos los vehículos con nombre son inventados. Las figuras se calculan durante la charla.",
    ),
    (
        "talk.why.brace",
        "una llave se abre o se cierra sola; la que se quiere escribir va doble",
    ),
    ("talk.why.digits", "se admiten de 1 a 9 cifras"),
    ("talk.why.name", "falta el nombre"),
    ("talk.why.unit", "el valor no tiene esa unidad"),
    ("topic.choice", "Qué disposición para este encargo"),
    ("topic.cornering", "El viraje"),
    ("topic.idle_drag", "Lo que cuesta un motor inactivo"),
    ("topic.launch", "La arrancada"),
    ("topic.load_transfer", "Transferencia de carga"),
    ("topic.motor_split", "Cuántos motores"),
    ("topic.packaging", "Colocar los motores"),
    ("topic.traction", "Límites de tracción"),
    ("topic.turn_in_place", "Giro en el sitio"),
    ("ui.as_csv", "CSV"),
    ("ui.as_json", "JSON"),
    ("ui.as_png_1", "PNG 1×"),
    ("ui.as_png_2", "PNG 2×"),
    ("ui.as_png_3", "PNG 3×"),
    ("ui.as_png_4", "PNG 4×"),
    ("ui.as_svg", "SVG"),
    ("ui.as_toml", "archivo de escenario"),
    ("ui.chart_read", "Leer el gráfico: {0}"),
    (
        "ui.chart_set",
        "Con un clic o la tecla Intro, {0} toma ese valor.",
    ),
    ("ui.copy", "Copiar"),
    ("ui.copy_element", "línea para incrustar"),
    ("ui.copy_frame", "marco para incrustar"),
    ("ui.copy_latex", "Copiar como LaTeX"),
    ("ui.copy_link", "enlace a este estado"),
    ("ui.copy_module", "módulo para incrustar"),
    ("ui.copy_text", "Copiar como texto"),
    ("ui.data", "Datos de este gráfico"),
    ("ui.grips", "Asas de la figura"),
    ("ui.motors.front", "motores en el eje delantero"),
    ("ui.motors.none", "ningún motor"),
    ("ui.motors.one", "1 motor"),
    ("ui.motors.rear", "motores en el eje trasero"),
    ("ui.motors.two", "2 motores"),
    ("ui.no", "no"),
    ("ui.own_tyres", "asfalto seco, neumáticos propios"),
    ("ui.own_vehicle", "su vehículo"),
    ("ui.pause", "Pausa"),
    ("ui.pin", "Fijar este estado"),
    ("ui.pinned", "Fijado: {0}."),
    ("ui.pinned_part", "{0} {1}, ahora {2}"),
    ("ui.pinned_same", "Fijado: el estado que se muestra."),
    ("ui.pinned_value", "(fijado {0})"),
    ("ui.play", "Reproducir"),
    ("ui.print", "Imprimir"),
    ("ui.quantity", "magnitud"),
    ("ui.redo", "Rehacer"),
    ("ui.reset", "Restablecer {0}"),
    ("ui.reset_all", "Restablecer todo"),
    ("ui.save_chart", "Guardar el gráfico"),
    ("ui.save_figure", "Guardar la figura"),
    ("ui.save_numbers", "Guardar los números"),
    ("ui.screen", "Pantalla completa"),
    ("ui.share", "Guardar y compartir"),
    ("ui.stale", "Se muestra el último resultado válido."),
    ("ui.step_back", "Un paso atrás, 0,05 s"),
    ("ui.step_forward", "Un paso adelante, 0,05 s"),
    ("ui.undo", "Deshacer"),
    ("ui.unpin", "Quitar el estado fijado"),
    ("ui.value", "valor"),
    ("ui.view", "Vista"),
    ("ui.view.bars", "comparación"),
    ("ui.view.chart", "gráfico"),
    ("ui.view.choice.bars", "sensibilidad"),
    ("ui.view.choice.plan", "disposición"),
    ("ui.view.plan", "vista en planta"),
    ("ui.view.side", "vista lateral"),
    ("ui.view.traction.plan", "comparación"),
    ("ui.view.turn_in_place.bars", "superficies"),
    ("ui.view.turn_in_place.plan", "desde arriba"),
    ("ui.working", "Desarrollo del cálculo"),
    ("ui.yes", "sí"),
    ("vehicle.corrie", "Corrie, un deportivo bajo"),
    ("vehicle.esker", "Esker, una berlina familiar"),
    ("vehicle.kame", "Kame, un coche urbano pequeño"),
    ("vehicle.moraine", "Moraine, un vehículo de trabajo pesado"),
    ("vehicle.name.corrie", "Corrie"),
    ("vehicle.name.esker", "Esker"),
    ("vehicle.name.kame", "Kame"),
    ("vehicle.name.moraine", "Moraine"),
    ("vehicle.own", "su vehículo"),
    (
        "why.air_lifts",
        "el aire sostiene un eje antes de que los neumáticos puedan empujar",
    ),
    ("why.axle_lifts", "un eje se despegaría del suelo"),
    ("why.no_distance", "en reposo no se recorre distancia"),
    ("why.no_questions", "este tema aún no tiene preguntas"),
    (
        "why.no_trace",
        "todavía no se ha dado un archivo de un ciclo",
    ),
    (
        "why.no_turn",
        "con estas velocidades de rueda, las ruedas se frenan unas a otras y el coche no gira",
    ),
    (
        "why.question_unclear",
        "con este escenario, la pregunta no tiene una respuesta clara",
    ),
    (
        "why.sides_too_different",
        "los lados agarran tan distinto que el coche se va en vez de girar",
    ),
    (
        "why.slope_slides",
        "en una cuesta tan empinada como el rozamiento, el coche se va hagan lo que hagan sus ruedas",
    ),
    (
        "why.slope_turns",
        "en una pendiente un viraje no es estacionario: la pendiente tira cada vez de otro lado",
    ),
    ("why.trace_cells", "una línea tiene dos celdas"),
    ("why.trace_fast", "la velocidad es mayor que 540 km/h"),
    (
        "why.trace_gap",
        "faltan filas, aquí o antes: los pasos hasta esta se diferencian en más de 1,5 veces",
    ),
    (
        "why.trace_jump",
        "la velocidad cambia más de 30 m/s en un segundo",
    ),
    (
        "why.trace_long",
        "el ciclo es demasiado largo: como máximo 43 200 filas y 600 kB",
    ),
    ("why.trace_negative", "la velocidad es menor que 0"),
    ("why.trace_number", "no son dos números"),
    ("why.trace_short", "hay menos de dos filas, o nada se mueve"),
    ("why.trace_time", "el tiempo no aumenta"),
];
