// Remembers on this device what is ticked. Without it, or where nothing may be stored, the boxes tick all the same.
(function () {
  "use strict";
  var list = document.querySelector("[data-ticks]");
  if (!list) return;
  var boxes = Array.prototype.slice.call(list.querySelectorAll("input[type=checkbox]"));
  var name = "ticks/" + list.getAttribute("data-ticks");

  function recall() {
    try {
      var kept = JSON.parse(localStorage.getItem(name));
      return Array.isArray(kept) ? kept : [];
    } catch (blocked) {
      return [];
    }
  }

  function keep() {
    var ticked = boxes.filter(function (box) { return box.checked; });
    try {
      localStorage.setItem(name, JSON.stringify(ticked.map(function (box) { return box.value; })));
    } catch (blocked) { /* then they last as long as the page */ }
  }

  var kept = recall();
  boxes.forEach(function (box) { box.checked = kept.indexOf(box.value) >= 0; });
  list.addEventListener("change", keep);

  var clear = document.createElement("button");
  clear.type = "button";
  clear.textContent = "Clear all ticks";
  clear.addEventListener("click", function () {
    boxes.forEach(function (box) { box.checked = false; });
    keep();
  });
  list.querySelector(".tools").appendChild(clear);
})();
