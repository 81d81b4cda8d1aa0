/* The first script of the pane, in the words of old browsers too: without it they would show "Opening" for ever. */
(function () {
  var isOld = !('noModule' in document.createElement('script')) || typeof Array.prototype.at !== 'function';
  if (isOld) {
    document.getElementById('pane').innerHTML =
      '<p role="alert">This version of Excel shows add-ins in a browser that is too old for Bosswright: neither the pane nor the functions can run. ' +
      'Install the WebView2 runtime of Windows, or take Microsoft 365, Excel 2021 with WebView2, or Excel on the web.</p>';
  }
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
