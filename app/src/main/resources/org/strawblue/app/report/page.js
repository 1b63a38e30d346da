// Remembers the units chosen and the steps ticked; the page works without it.
(function () {
  var root = document.documentElement;
  var key = "strawblue " + document.title;
  function store(name, value) {
    try { localStorage.setItem(key + name, value); } catch (e) { /* a page opened from a file may not store */ }
  }
  function stored(name) {
    try { return localStorage.getItem(key + name); } catch (e) { return null; }
  }
  function units(name) {
    root.className = name;
    buttons.forEach(function (b) { b.setAttribute("aria-pressed", String(b.dataset.units === name)); });
  }
  var buttons = Array.prototype.slice.call(document.querySelectorAll("[data-units]"));
  buttons.forEach(function (b) {
    b.addEventListener("click", function () { units(b.dataset.units); store("units", b.dataset.units); });
  });
  units(stored("units") || root.className);
  document.querySelectorAll("input[type=checkbox]").forEach(function (box) {
    box.checked = stored(box.id) === "1";
    box.addEventListener("change", function () { store(box.id, box.checked ? "1" : "0"); });
  });
})();
