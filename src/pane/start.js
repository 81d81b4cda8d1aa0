/* The first script of the pane, in the words of old browsers too: without it they would show "Opening" for ever. */
(function () {
  /* The build puts in what is said, by language. */
  var words = 'START_WORDS';
  var isGerman = /^de\b/i.test(navigator.language || navigator.userLanguage || '');
  var said = words[isGerman ? 'de' : 'en'];
  var pane = document.getElementById('pane');
  var isOld = !('noModule' in document.createElement('script')) || typeof Array.prototype.at !== 'function';
  if (isGerman) document.documentElement.lang = 'de';
  if (isOld) pane.innerHTML = '<p role="alert">' + said.tooOld + '</p>';
  else pane.textContent = said.opening;
  /* Seen at once, the pane is wanted: its file is on its way while the functions are read. */
  if (!isOld && document.visibilityState === 'visible' && window.innerWidth > 0) {
    var early = document.createElement('link');
    early.rel = 'preload';
    early.as = 'script';
    early.href = 'chunks/view-pane.js';
    document.head.appendChild(early);
  }
  /* Opened as a plain page without a network there is no Office.js; functions.js, loaded next, then registers with nobody. */
  if (!window.CustomFunctions) window.CustomFunctions = { associate: function () {} };
})();
