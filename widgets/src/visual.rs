//! What a topic looks like: its views, each drawn from a scenario and its answer.

use crate::figure::{
    BodyKind, Chart, ForceScale, ScaleBar, Scene, SvgOptions, chart_svg, reveal, svg,
};
use axlewright_core::format;
use axlewright_core::layout::Layout;
use axlewright_core::talk::Parts;
use axlewright_core::topic::Topic;
use axlewright_core::units::{Dimension, System};
use axlewright_core::words::{self, Lang};
use axlewright_core::{Problem, Scenario, vehicle};

/// A way of looking at a topic.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum View {
    /// From the side.
    Side,
    /// From above.
    Plan,
    /// Bars, a row for each layout.
    Bars,
    /// A chart.
    Chart,
}

impl View {
    /// Every view.
    pub const ALL: [Self; 4] = [Self::Side, Self::Plan, Self::Bars, Self::Chart];

    /// Its word on the command line and in links.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            Self::Side => "side",
            Self::Plan => "plan",
            Self::Bars => "bars",
            Self::Chart => "chart",
        }
    }
}

/// How a figure is wanted.
#[derive(Clone, Copy, Debug)]
pub struct Look<'a> {
    /// Width in scene units.
    pub width: f64,
    /// Language.
    pub lang: Lang,
    /// Units of people.
    pub system: System,
    /// A pinned scenario, drawn as a ghost.
    pub pinned: Option<&'a Scenario>,
    /// Parts of the scene that are drawn. A chart is always whole.
    pub parts: Parts,
    /// Whether the figure carries its caution. An element shows it beside the figure instead.
    pub caution: bool,
}

impl Default for Look<'_> {
    fn default() -> Self {
        Self {
            width: crate::figure::WIDE,
            lang: Lang::English,
            system: System::Si,
            pinned: None,
            parts: Parts::FIGURE,
            caution: true,
        }
    }
}

/// A drawn view.
#[derive(Clone, Debug)]
#[allow(
    clippy::large_enum_variant,
    reason = "a drawing is made once and kept once"
)]
pub enum Drawing {
    /// A scene.
    Scene(Scene),
    /// A chart.
    Chart(Chart),
}

impl Drawing {
    /// The finding.
    #[must_use]
    pub fn title(&self) -> &str {
        match self {
            Self::Scene(scene) => &scene.title,
            Self::Chart(chart) => &chart.title,
        }
    }

    /// The text description.
    #[must_use]
    pub fn description(&self) -> &str {
        match self {
            Self::Scene(scene) => &scene.description,
            Self::Chart(chart) => &chart.description,
        }
    }

    /// Height in scene units.
    #[must_use]
    pub fn height(&self) -> f64 {
        match self {
            Self::Scene(scene) => scene.height,
            Self::Chart(chart) => chart.height,
        }
    }

    /// As SVG.
    #[must_use]
    pub fn svg(&self, options: &SvgOptions) -> String {
        match self {
            Self::Scene(scene) => svg(scene, options),
            Self::Chart(chart) => chart_svg(chart, options),
        }
    }
}

/// The looks of one topic.
pub struct Visual {
    /// The topic.
    pub topic: &'static Topic,
    /// Its views; the first is shown unless told otherwise.
    pub views: &'static [View],
    /// Draws a view. Only called with a view of `views`.
    pub(crate) draw: Draw,
    /// Outputs of the layouts that an element shows as a table to sort, a column each; none for most.
    pub table: &'static [&'static str],
    /// Path of the input that is the time shown, where the topic has a run to play.
    pub playback: Option<&'static str>,
    /// Does a piece of the work on a scenario and says whether all is done, where an answer takes longer
    /// than a frame.
    pub work: Option<Work>,
    /// Output whose time the playback covers with some to spare; `*` stands for the shown layout.
    pub playback_to: &'static str,
}

/// A piece of the work on a scenario; whether all of it is done.
pub(crate) type Work = fn(&Scenario) -> Result<bool, Problem>;

/// Draws a view of a scenario.
pub(crate) type Draw = fn(&Scenario, View, &Look) -> Result<Drawing, Problem>;

/// Names every topic once: natively they make one table, and in the browser a part of the wasm each.
macro_rules! visuals {
    ($($topic:ident),* $(,)?) => {
        /// The looks of all topics, in the order of [`TOPICS`](axlewright_core::topic::TOPICS). In the
        /// browser, whoever names this table fetches every topic.
        pub const VISUALS: &[&Visual] = &[$(&crate::$topic::VISUAL),*];

        #[cfg(target_arch = "wasm32")]
        crate::element::parts::topic_parts!($($topic),*);
    };
}

visuals!(
    load_transfer,
    traction,
    motor_split,
    launch,
    cornering,
    turn_in_place,
    idle_drag,
    packaging,
    choice
);

impl Visual {
    /// A topic with a side view and a chart, without table or run.
    pub(crate) const fn of_topic(topic: &'static Topic, draw: Draw) -> Self {
        Self {
            topic,
            views: &[View::Side, View::Chart],
            draw,
            table: &[],
            playback: None,
            work: None,
            playback_to: "layouts.*.time_to_100_km_h",
        }
    }

    /// The looks of a topic.
    #[must_use]
    pub fn of(topic: &Topic) -> Option<&'static Self> {
        VISUALS.iter().find(|v| v.topic.name == topic.name).copied()
    }

    /// The view of a word; an empty word is the topic's first view.
    ///
    /// # Errors
    /// [`Problem::UnknownWord`] lists the topic's views.
    pub fn view(&self, word: &str) -> Result<View, Problem> {
        if word.is_empty() {
            return Ok(self.views[0]);
        }
        self.views
            .iter()
            .find(|view| view.word() == word)
            .copied()
            .ok_or_else(|| Problem::UnknownWord {
                field: "view".into(),
                value: word.chars().take(40).collect(),
                allowed: self.views.iter().map(|view| view.word()).collect(),
            })
    }

    /// Draws a view of a scenario.
    ///
    /// # Errors
    /// A [`Problem`] of the scenario.
    pub fn draw(&self, scenario: &Scenario, view: View, look: &Look) -> Result<Drawing, Problem> {
        debug_assert!(self.views.contains(&view));
        let mut drawing = (self.draw)(&self.topic.own(scenario), view, look)?;
        if let Drawing::Scene(scene) = &mut drawing {
            reveal(scene, look.parts);
        }
        Ok(drawing)
    }
}

/// Says quantities and sentences in a language and a system of units.
#[derive(Clone, Copy)]
pub(crate) struct Voice {
    pub(crate) lang: Lang,
    system: System,
}

impl Voice {
    pub(crate) fn of(look: &Look) -> Self {
        Self {
            lang: look.lang,
            system: look.system,
        }
    }

    pub(crate) fn word(self, key: &str) -> String {
        words::get(self.lang, key).into()
    }

    pub(crate) fn fill(self, key: &str, parts: &[&str]) -> String {
        words::fill(self.lang, key, parts)
    }

    pub(crate) fn quantity(self, value: f64, dimension: Dimension, digits: u8) -> String {
        format::quantity(value, dimension, self.system, digits, self.lang)
    }

    pub(crate) fn force(self, value: f64) -> String {
        self.quantity(value, Dimension::Force, 4)
    }

    pub(crate) fn acceleration(self, value: f64) -> String {
        let in_g = value / axlewright_core::GRAVITY_M_S2;
        format::with_unit(self.fixed(in_g, 2), "g")
    }

    pub(crate) fn percent(self, share: f64) -> String {
        format::with_unit(self.fixed(100.0 * share, 0), "%")
    }

    pub(crate) fn fixed(self, value: f64, decimals: u8) -> String {
        format::fixed(value, decimals, self.lang)
    }

    pub(crate) fn unit(self, dimension: Dimension) -> String {
        dimension.display_unit(self.system).into()
    }

    pub(crate) fn in_unit(self, value: f64, dimension: Dimension) -> f64 {
        axlewright_core::units::from_si(value, dimension, self.system)
    }

    /// The line that says whose vehicle it is.
    pub(crate) fn whose(self, scenario: &Scenario) -> String {
        match scenario.word("vehicle.base") {
            Some(base) => self.fill(
                "figure.invented",
                &[&self.word(&format!("vehicle.name.{base}"))],
            ),
            None => self.word("figure.own"),
        }
    }

    pub(crate) fn scale_bar(self, scale: &ForceScale) -> ScaleBar {
        // A round number in the unit that is read.
        let mut shown = ForceScale {
            newtons_per_unit: self.in_unit(scale.newtons_per_unit, Dimension::Force),
            ..*scale
        };
        shown.largest_n = self.in_unit(scale.largest_n, Dimension::Force);
        let force_n = axlewright_core::units::to_si(shown.bar_n(), Dimension::Force, self.system);
        ScaleBar {
            force_n,
            label: self.quantity(force_n, Dimension::Force, 2),
        }
    }
}

/// How many layouts a chart draws at most: more lines cannot be told apart.
pub(crate) const MOST_LAYOUTS: usize = 4;

/// The layouts that a chart draws: the first of those compared, and the shown one among them.
pub(crate) fn drawn_layouts(scenario: &Scenario) -> Vec<Layout> {
    let mut layouts = scenario.layouts();
    let shown = scenario.layout();
    if layouts.iter().position(|layout| *layout == shown) >= Some(MOST_LAYOUTS) {
        layouts.insert(0, shown);
    }
    layouts.truncate(MOST_LAYOUTS);
    layouts
}

/// The outline that a scenario's figures draw.
pub(crate) fn body(scenario: &Scenario) -> BodyKind {
    let word = scenario
        .word("vehicle.body")
        .or_else(|| scenario.word("vehicle.base").and_then(vehicle::demo_body));
    match word {
        Some("small_car") => BodyKind::SmallCar,
        Some("utility") => BodyKind::Utility,
        Some("sports_car") => BodyKind::Sports,
        _ => BodyKind::Saloon,
    }
}

/// A force not below the given one from a coarse ladder, so that a scale holds while a slider moves.
pub(crate) fn scale_step(force_n: f64) -> f64 {
    let mut decade = 1.0;
    while decade * 10.0 <= force_n {
        decade *= 10.0;
    }
    [1.0, 1.6, 2.5, 4.0, 6.5, 10.0]
        .into_iter()
        .map(|step| step * decade)
        .find(|step| *step >= force_n)
        .unwrap_or(10.0 * decade)
}
