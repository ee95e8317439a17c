// Paper cannot unfold: open everything before printing, and close it again behind.
(function () {
  "use strict";
  var opened = [];
  addEventListener("beforeprint", function () {
    document.querySelectorAll("details:not([open]):not(.source):not(.group details)").forEach(function (one) {
      one.open = true;
      opened.push(one);
    });
  });
  addEventListener("afterprint", function () {
    opened.splice(0).forEach(function (one) { one.open = false; });
  });
})();
