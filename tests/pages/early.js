// Set before the script that knows the element has run.
document.querySelector("#early").vehicle = "kame";
