//! The wasm instance stops on purpose: the page lives on.

use crate::session::Window;

#[tokio::test]
async fn after_a_trap_every_element_is_put_back_with_its_scenario() {
    let window = Window::open().await;
    window.visit("three.html").await;
    for tag in ["axle-load-transfer", "axle-traction", "axle-turn-in-place"] {
        window.ready(tag).await;
    }
    window
        .run(
            "globalThis.errors = []; addEventListener('error', e => errors.push(e.message));\
             addEventListener('unhandledrejection', e => errors.push(String(e.reason)));\
             document.querySelector('axle-load-transfer').setAttribute('acceleration', '0.8 g');",
        )
        .await;
    let before = window.answer("axle-load-transfer").await;
    for round in 1..=2 {
        let seen = window
            .run(
                "const element = document.querySelector('axle-load-transfer');\
                 const { provokeTrap } = await import('./axlewright.js');\
                 let told = ''; try { await provokeTrap(); } catch (e) { told = String(e); }\
                 const root = element.shadowRoot;\
                 const notice = root.querySelector('[part~=notice]').textContent;\
                 const picture = root.querySelectorAll('svg').length;\
                 return [told, notice, picture];",
            )
            .await;
        assert!(
            seen[0].as_str().is_some_and(|t| t.contains("provoked")),
            "{seen}"
        );
        assert!(
            seen[1].as_str().is_some_and(|t| t.contains("stopped")),
            "round {round}: {seen}"
        );
        assert!(
            seen[2].as_u64() >= Some(1),
            "the last picture stays: {seen}"
        );
        for tag in ["axle-load-transfer", "axle-traction", "axle-turn-in-place"] {
            window.ready(tag).await;
        }
        assert_eq!(
            window.answer("axle-load-transfer").await,
            before,
            "round {round}"
        );
    }
    // It works on: an input still moves it.
    window
        .run("document.querySelector('axle-load-transfer').setAttribute('acceleration', '0.2 g');")
        .await;
    assert_ne!(window.answer("axle-load-transfer").await, before);
    assert_eq!(window.run("return errors;").await, serde_json::json!([]));
    window.close().await;
}
