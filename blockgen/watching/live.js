// Waits for news of the watch: changes the words above the page, and loads the page again when there is another one.
(function () {
  "use strict";
  var words = document.getElementById("watch-words");
  var shown = words.dataset.page;
  var details = words.querySelector("details");

  function say(text, wrong) {
    var lines = text.split("\n");
    words.querySelector("p").textContent = lines.slice(0, 2).join("\n");
    words.querySelector("pre").textContent = lines.slice(2).join("\n");
    words.hidden = !text;
    details.hidden = lines.length < 3;
    details.open = wrong;
    if (wrong) { words.dataset.wrong = "yes"; } else { delete words.dataset.wrong; }
  }

  var news = new EventSource("/watch/news");
  news.onmessage = function (event) {
    var told = JSON.parse(event.data);
    if (told.page !== shown) { location.reload(); } else { say(told.words, told.wrong); }
  };
  news.onerror = function () {
    say("The watch has ended or does not answer. This page is from its last build.", false);
  };
}());
