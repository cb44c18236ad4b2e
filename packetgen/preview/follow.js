// Keeps a page of the preview up to date: the strip at once, the page by loading it again.
(() => {
  const seen = document.currentScript.dataset.version;
  const strip = document.getElementById("preview-strip");
  let source = null;

  function hear(event) {
    const now = JSON.parse(event.data);
    if (now.version !== seen) {
      event.target.close();
      location.reload();
      return;
    }
    if (strip.innerHTML !== now.strip) {
      const open = strip.querySelector("details[open]") !== null;
      strip.innerHTML = now.strip;
      const advice = strip.querySelector("details");
      if (advice) advice.open = open;
    }
  }

  // A browser grants one host few connections, so a page that nobody sees lets go of its own.
  function follow() {
    if (document.hidden) {
      if (source) source.close();
      source = null;
    } else if (source === null) {
      source = new EventSource("/~preview/events");
      source.onmessage = hear;
    }
  }

  document.addEventListener("visibilitychange", follow);
  window.addEventListener("pagehide", () => source && source.close());
  window.addEventListener("pageshow", (event) => {
    if (event.persisted) location.reload();
  });
  follow();
})();
