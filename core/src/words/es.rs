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
    ("allowed.no_question", "ninguna pregunta"),
    (
        "allowed.other_question",
        "otra pregunta u otros valores del escenario",
    ),
    (
        "allowed.ratio",
        "un número como 0,5 o un porcentaje como 50 %",
    ),
    (
        "allowed.seed",
        "el nombre de una pregunta y después un número entero como semilla",
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
    ("dimension.acceleration", "aceleración"),
    ("dimension.angle", "ángulo"),
    ("dimension.area", "área"),
    ("dimension.density", "densidad"),
    ("dimension.energy", "energía"),
    ("dimension.force", "fuerza"),
    ("dimension.frequency", "frecuencia"),
    ("dimension.inertia", "momento de inercia"),
    ("dimension.length", "longitud"),
    ("dimension.mass", "masa"),
    ("dimension.power", "potencia"),
    ("dimension.ratio", "números puros"),
    ("dimension.rotation", "velocidad de giro"),
    ("dimension.slope", "pendiente"),
    ("dimension.speed", "velocidad"),
    ("dimension.time", "tiempo"),
    ("dimension.torque", "par"),
    ("figure.axis.acceleration", "aceleración"),
    ("figure.axis.axle_load", "carga por eje"),
    ("figure.axis.friction", "adherencia máxima"),
    ("figure.axis.front_share", "parte delantera"),
    ("figure.axis.limit", "límite de tracción"),
    ("figure.axis.sliding_friction", "rozamiento al deslizar"),
    ("figure.axis.speed", "velocidad"),
    ("figure.axis.time", "tiempo"),
    ("figure.axis.wheel_torque", "mayor par en rueda"),
    ("figure.braking", "fuerza de frenado"),
    ("figure.caution", "Precaución"),
    ("figure.cg_height", "altura del CG {0}"),
    ("figure.drag", "resistencia del aire"),
    ("figure.front_load", "carga delantera, {0}"),
    ("figure.grade", "pendiente {0}"),
    ("figure.inertia", "m·a"),
    ("figure.invented", "Vehículo inventado «{0}»."),
    (
        "figure.launch.all_grip",
        "Limitan los neumáticos de todos los ejes motrices",
    ),
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
    ("figure.launch.power", "Limita la potencia de los motores"),
    ("figure.launch.rear_grip", "Limitan los neumáticos traseros"),
    (
        "figure.launch.title",
        "{0} tras {1}: {2}, a {3} de la salida",
    ),
    ("figure.launch.torque", "Limita el par de los motores"),
    ("figure.line.available", "da un motor"),
    ("figure.line.front", "eje delantero"),
    ("figure.line.needed", "necesario"),
    ("figure.line.rear", "eje trasero"),
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
        "figure.turn_in_place.note_drives",
        "lo máximo que dan las dos ruedas motrices",
    ),
    (
        "figure.turn_in_place.note_energy",
        "a los neumáticos y al suelo en una vuelta completa",
    ),
    (
        "figure.turn_in_place.note_holds",
        "con que resiste el otro eje",
    ),
    (
        "figure.turn_in_place.note_share",
        "de él empuja a lo largo de la rueda",
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
        "figure.turn_in_place.title",
        "Giro en el sitio: todas las huellas deslizan",
    ),
    (
        "figure.turn_in_place.title_cannot",
        "{0} no puede girar en el sitio",
    ),
    ("figure.weight", "peso"),
    ("figure.wheelbase", "batalla {0}"),
    (
        "help.air.density",
        "Densidad del aire. A nivel del mar y 15 °C: 1,225 kg/m³.",
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
        "help.vehicle.anti_lift_front",
        "Parte del cambio de carga delantero que llevan los brazos de la suspensión en lugar de los muelles.",
    ),
    (
        "help.vehicle.anti_squat_rear",
        "Parte del cambio de carga trasero que llevan los brazos de la suspensión en lugar de los muelles.",
    ),
    (
        "help.vehicle.base",
        "Un vehículo de muestra inventado. Cada uno de los demás campos del vehículo cambia uno de sus valores.",
    ),
    (
        "help.vehicle.battery_power",
        "Potencia máxima que la batería da a todos los motores juntos. Si falta: toda la que piden.",
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
        "help.vehicle.damping_ratio",
        "Amortiguamiento de la carrocería sobre sus muelles, como parte del crítico.",
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
        "help.vehicle.final_drive_ratio",
        "Relación entre el árbol de transmisión y el eje rígido.",
    ),
    (
        "help.vehicle.gear_efficiency",
        "Parte de la potencia de un motor que transmiten sus engranajes.",
    ),
    (
        "help.vehicle.lift_area_front",
        "Coeficiente de sustentación del eje delantero por área frontal. La carga aerodinámica hacia abajo es negativa.",
    ),
    (
        "help.vehicle.lift_area_rear",
        "Coeficiente de sustentación del eje trasero por área frontal. La carga aerodinámica hacia abajo es negativa.",
    ),
    ("help.vehicle.mass", "Masa del vehículo con su carga."),
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
        "help.vehicle.wheel_inertia",
        "Momento de inercia de una rueda con su neumático respecto de su eje.",
    ),
    (
        "help.vehicle.wheel_radius",
        "Radio de rodadura de las ruedas.",
    ),
    ("help.vehicle.wheelbase", "Distancia entre los ejes."),
    ("input.air.density", "densidad del aire"),
    ("input.launch.model", "modelo"),
    ("input.launch.slip_target", "deslizamiento fijado"),
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
    ("input.vehicle.anti_lift_front", "antielevación delantera"),
    ("input.vehicle.anti_squat_rear", "antihundimiento trasero"),
    ("input.vehicle.base", "vehículo"),
    ("input.vehicle.battery_power", "potencia de la batería"),
    ("input.vehicle.body", "contorno de la carrocería"),
    ("input.vehicle.cg_height", "altura del CG"),
    ("input.vehicle.cg_to_front_axle", "CG tras el eje delantero"),
    ("input.vehicle.damping_ratio", "factor de amortiguamiento"),
    ("input.vehicle.drag_area", "área de resistencia"),
    ("input.vehicle.drag_height", "altura de la resistencia"),
    (
        "input.vehicle.final_drive_ratio",
        "relación del grupo final",
    ),
    (
        "input.vehicle.gear_efficiency",
        "rendimiento de los engranajes",
    ),
    (
        "input.vehicle.lift_area_front",
        "área de sustentación delantera",
    ),
    (
        "input.vehicle.lift_area_rear",
        "área de sustentación trasera",
    ),
    ("input.vehicle.mass", "masa"),
    (
        "input.vehicle.motor_decline_speed",
        "segunda velocidad base del motor",
    ),
    (
        "input.vehicle.motor_max_speed",
        "velocidad máxima del motor",
    ),
    ("input.vehicle.motor_power", "potencia del motor"),
    ("input.vehicle.motor_ratio", "relación del motor"),
    ("input.vehicle.motor_torque", "par del motor"),
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
    ("input.vehicle.wheel_inertia", "inercia de rueda"),
    ("input.vehicle.wheel_radius", "radio de rueda"),
    ("input.vehicle.wheelbase", "batalla"),
    ("option.as_fitted", "los montados"),
    ("option.full", "modelo completo"),
    ("option.ideal", "adherencia ideal"),
    ("option.independent", "independiente"),
    ("option.locked", "bloqueado"),
    ("option.off", "desactivado"),
    ("option.on", "activado"),
    ("option.open", "abierto"),
    ("option.open_with_brakes", "abierto, con los frenos"),
    ("option.saloon", "berlina"),
    ("option.small_car", "coche pequeño"),
    ("option.solid", "rígido"),
    ("option.sports_car", "deportivo"),
    ("option.unlimited", "sin límite"),
    ("option.utility", "vehículo de trabajo"),
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
    (
        "output.launch.rollout_time",
        "tiempo del primer pie (rollout)",
    ),
    ("output.launch.time_to_100_km_h", "tiempo hasta 100 km/h"),
    ("output.launch.time_to_160_km_h", "tiempo hasta 160 km/h"),
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
        "output.turn_in_place.driving_moment",
        "momento de las dos ruedas motrices",
    ),
    (
        "output.turn_in_place.energy_per_turn",
        "energía para una vuelta completa",
    ),
    ("output.turn_in_place.feasible", "puede girar en el sitio"),
    (
        "output.turn_in_place.friction_used_lengthwise",
        "parte del rozamiento usada a lo largo",
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
        "output.turn_in_place.holding_moment",
        "momento del otro eje, arrastrado de lado",
    ),
    (
        "output.turn_in_place.lateral_scrub_moment",
        "momento si todas las ruedas se arrastraran de lado",
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
        "output.turn_in_place.tractive_force_per_wheel",
        "fuerza de tracción por rueda, de media",
    ),
    (
        "output.turn_in_place.turning_centre_behind_front_axle",
        "centro de giro tras el eje delantero",
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
    (
        "problem.missing",
        "Falta {0}: délo ({1}), o nombre un vehículo de muestra con vehicle.base.",
    ),
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
        "question.change",
        "Suponga que solo cambia una cosa: {0}, de {1} a {2}. ¿Qué pasa con este valor? {3}",
    ),
    ("question.changed", "El valor pasa de {0} a {1}."),
    ("question.close", "a menos de un 1\u{2009}% del valor"),
    ("question.commit", "Confirmar la predicción"),
    ("question.far", "muchísimo de más o de menos"),
    ("question.field", "Su predicción: {0}"),
    ("question.front_axle", "el eje delantero"),
    ("question.given", "Datos"),
    ("question.hint", "Pista"),
    ("question.inside", "Está dentro de la tolerancia del {0}."),
    (
        "question.later",
        "La figura, los números y el desarrollo del cálculo aparecen después de su predicción.",
    ),
    ("question.less", "disminuye"),
    (
        "question.load_transfer.change.hint",
        "Busque el valor que cambia entre los símbolos de la ecuación de la carga.",
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
        "question.load_transfer.rear_load",
        "El coche acelera a {0}. ¿Cuánto vale la carga de su eje trasero?",
    ),
    (
        "question.load_transfer.rear_load.hint",
        "La fuerza de inercia actúa a la altura del CG. Deben equilibrar su momento unas cargas por eje separadas por una batalla.",
    ),
    ("question.more", "aumenta"),
    ("question.outside", "Está fuera de la tolerancia del {0}."),
    ("question.rear_axle", "el eje trasero"),
    ("question.same", "sigue igual"),
    (
        "question.tolerance",
        "Es correcto un valor que difiera de la respuesta un {0} como máximo.",
    ),
    (
        "question.tolerance_find",
        "Es correcto un valor cuyo resultado difiera de lo pedido un {0} como máximo.",
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
        "question.traction.what_limits",
        "Disposición F1R1 con reparto fijo: el eje delantero da el {0} de la fuerza de tracción. ¿Qué limita la aceleración?",
    ),
    (
        "question.traction.what_limits.hint",
        "Compare la parte delantera de la fuerza con la parte delantera de la carga en el límite, no en reposo.",
    ),
    (
        "question.turn_in_place.change.hint",
        "Escriba el valor como un producto: rozamiento, carga, una parte que depende de la forma del coche, un brazo de palanca. ¿Cuál de ellos cambia?",
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
        "question.turn_in_place.wheel_torque",
        "El coche gira en el sitio con las cuatro ruedas motrices. ¿Cuánto vale el par medio en una rueda?",
    ),
    (
        "question.turn_in_place.wheel_torque.hint",
        "Cada huella usa todo su rozamiento, pero solo pide par la parte que apunta a lo largo de la rueda.",
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
        "question.verdict_nothing",
        "Usted dijo {0}. Con ese valor, el coche no puede estar como dice la pregunta. La respuesta es {1}.",
    ),
    ("question.verdict_right", "Usted dijo: {0}. Es correcto."),
    (
        "question.verdict_wrong",
        "Usted dijo: {0}. Lo correcto es: {1}.",
    ),
    (
        "reason.front_and_rear_slip",
        "patinan los neumáticos delanteros y traseros",
    ),
    ("reason.front_lift", "se levanta el eje delantero"),
    ("reason.front_slip", "patinan los neumáticos delanteros"),
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
        "reason.pair_holds_itself",
        "Las dos ruedas motrices también deben sujetar su propio eje contra la fuerza lateral; lo que queda de su rozamiento no gira el coche en el sitio.",
    ),
    ("reason.rear_slip", "patinan los neumáticos traseros"),
    (
        "reason.undriven_axle_holds",
        "Las dos ruedas motrices no pueden arrastrar de lado el otro eje; mientras patinan, el coche solo oscila alrededor de ese eje.",
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
    ("site.beside", "Página anterior y siguiente"),
    ("site.check_case", "Caso publicado"),
    ("site.check_here", "Aquí"),
    ("site.check_published", "Publicado"),
    ("site.check_source", "Fuente"),
    (
        "site.disclaimer",
        "Para la enseñanza y una primera comparación. No sustituye el trabajo de un ingeniero habilitado; prevalecen la ley local y las instrucciones del fabricante del vehículo.",
    ),
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
    (
        "site.licence",
        "De uso libre bajo la licencia MIT o la Apache 2.0.",
    ),
    (
        "site.no_script",
        "Este elemento necesita script, que aquí está desactivado.",
    ),
    ("site.pages", "Páginas"),
    ("site.skip", "Ir al contenido"),
    ("site.surface", "Superficie"),
    ("site.surface_known", "Cómo lo sabemos"),
    ("site.surface_memory", "de memoria"),
    ("site.surface_peak", "Adherencia máxima"),
    ("site.surface_quoted", "citado en otro texto"),
    ("site.surface_sliding", "Rozamiento al deslizar"),
    (
        "source.launch",
        "Ecuación del movimiento m·a = F_f + F_r − resistencia, integrada desde el reposo (Dormand y Prince, orden 5)",
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
        "starter.intro",
        "Una línea que empieza con # es un comentario; quite el # para fijar ese campo.",
    ),
    (
        "step.after_rollout",
        "el reloj arranca después del primer pie",
    ),
    ("step.available", "par que un motor da a su rueda"),
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
    ("step.drag", "resistencia aerodinámica"),
    ("step.drive_cost", "coste de todas las unidades motrices"),
    ("step.drive_mass", "masa de todas las unidades motrices"),
    ("step.drop_rear", "descenso sobre el eje trasero"),
    (
        "step.end_speed",
        "velocidad al final: leída en la simulación",
    ),
    (
        "step.energy",
        "energía perdida al deslizar en una vuelta completa",
    ),
    ("step.force", "fuerza de tracción que pide esta aceleración"),
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
    ("step.front_share", "parte delantera de la carga"),
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
    ("step.heave", "desplazamiento vertical del CG"),
    (
        "step.ideal_share",
        "parte delantera ideal de la fuerza en reposo: la parte delantera de la carga",
    ),
    (
        "step.lateral_scrub",
        "momento si cada huella se arrastrara justo de lado",
    ),
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
        "step.limit_lift",
        "límite: el eje delantero se despega del suelo",
    ),
    (
        "step.limit_rear",
        "límite de la tracción trasera: el eje motriz gana carga",
    ),
    (
        "step.matching",
        "aceleración a la que la parte delantera de la carga es la del par",
    ),
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
    ("step.motors", "motores: delante y detrás"),
    (
        "step.other_holds",
        "momento con que el otro eje resiste a que lo arrastren de lado",
    ),
    (
        "step.pair_drives",
        "lo máximo que dan las dos ruedas motrices alrededor de su propio eje",
    ),
    (
        "step.parts",
        "piezas: motor, inversor y engranajes por cada motor, dos semiejes por cada eje motriz, un diferencial donde un motor mueve dos ruedas",
    ),
    (
        "step.peak_slip",
        "mayor deslizamiento de este eje: leído en la simulación",
    ),
    ("step.pitch", "ángulo de cabeceo, morro abajo positivo"),
    (
        "step.power_needed",
        "potencia del motor que más empuja en el límite a esta velocidad, según la fuerza que debe dar allí",
    ),
    ("step.ratio", "carga trasera entre carga delantera"),
    ("step.rear_force", "fuerza de tracción del eje trasero"),
    ("step.rear_load", "carga del eje trasero"),
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
    ("step.same_force", "la misma en cada rueda"),
    (
        "step.shift",
        "carga que el par motor de un eje rígido pasa de una rueda a la otra, en proporción a la fuerza",
    ),
    (
        "step.slide_front",
        "velocidad de deslizamiento de una huella delantera entre velocidad de guiñada",
    ),
    (
        "step.slide_rear",
        "velocidad de deslizamiento de una huella trasera entre velocidad de guiñada",
    ),
    (
        "step.slope_angle",
        "ángulo de la cuesta a partir de la pendiente",
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
        "step.static_front",
        "carga del eje delantero en reposo y en llano",
    ),
    (
        "step.static_rear",
        "carga del eje trasero en reposo y en llano",
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
        "step.two_to_one",
        "aceleración a la que el eje trasero lleva el doble que el delantero",
    ),
    (
        "step.tyre_heat",
        "calor del deslizamiento, delante y detrás: fuerza por velocidad de deslizamiento, sumada",
    ),
    ("step.weight", "peso"),
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
    ("surface.short.gravel", "grava"),
    ("surface.short.ice", "hielo"),
    ("surface.short.snow", "nieve"),
    ("surface.snow", "nieve compacta"),
    ("topic.launch", "La arrancada"),
    ("topic.load_transfer", "Transferencia de carga"),
    ("topic.motor_split", "Cuántos motores"),
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
    ("ui.view.chart", "gráfico"),
    ("ui.view.plan", "vista en planta"),
    ("ui.view.side", "vista lateral"),
    ("ui.view.traction.plan", "comparación"),
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
    ("why.no_questions", "este tema aún no tiene preguntas"),
    (
        "why.no_turn",
        "con estas velocidades de rueda, las ruedas se frenan unas a otras y el coche no gira",
    ),
    (
        "why.question_unclear",
        "con este escenario, la pregunta no tiene una respuesta clara",
    ),
    (
        "why.slope_slides",
        "todas las huellas deslizan ya; en una cuesta nada sujeta el coche, y se va cuesta abajo",
    ),
];
