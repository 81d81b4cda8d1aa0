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
  /* Opened as a plain page without a network there is no Office.js; functions.js, loaded next, then registers with nobody. */
  if (!window.CustomFunctions) window.CustomFunctions = { associate: function () {} };
})();
