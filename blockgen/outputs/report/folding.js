// Unfolds everything at a press; and what belongs on paper before printing, which is folded again behind.
(function () {
  "use strict";
  var opened = [];
  addEventListener("beforeprint", function () {
    document.querySelectorAll("details.paper:not([open])").forEach(function (one) {
      one.open = true;
      opened.push(one);
    });
  });
  addEventListener("afterprint", function () {
    opened.splice(0).forEach(function (one) { one.open = false; });
  });

  var button = document.getElementById("unfold");
  button.hidden = false;
  button.addEventListener("click", function () {
    var open = button.getAttribute("aria-pressed") !== "true";
    document.querySelectorAll("main details").forEach(function (one) { one.open = open; });
    button.setAttribute("aria-pressed", String(open));
  });
})();
