// Stands outside the app, so that it still speaks when the app does not start.
setInterval(() => {
  const started = 'started' in document.documentElement.dataset;
  document.getElementById('not-started').hidden = started || performance.now() < 10000;
}, 1000);
