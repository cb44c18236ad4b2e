// Questions put to a page that a browser shows. Each gives a list of sentences; none is best.
const probes = {
  name(element) {
    const told = element.id ? "#" + element.id : [...element.classList].map((each) => "." + each).join("");
    const words = (element.textContent || element.alt || "").trim().replace(/\s+/g, " ").slice(0, 40);
    return `<${element.localName}${told}> “${words}”`;
  },

  shown(element) {
    return element.checkVisibility({ visibilityProperty: true, contentVisibilityAuto: true });
  },

  // For screen readers only: laid out, but clipped to nothing.
  hiddenFromEyes(element) {
    for (let each = element; each; each = each.parentElement) {
      const box = each.getBoundingClientRect();
      const style = getComputedStyle(each);
      if (style.position !== "static" && (box.width <= 1 || box.height <= 1)) return true;
      if (style.clipPath.startsWith("inset(50%") || style.clipPath.startsWith("inset(100%")) return true;
    }
    return false;
  },

  scrolls(element) {
    for (let each = element; each && each !== document.body; each = each.parentElement) {
      if (/auto|scroll/.test(getComputedStyle(each).overflowX)) return true;
    }
    return false;
  },

  async pictures() {
    const faults = [];
    for (const image of document.images) {
      image.loading = "eager";
      await image.decode().catch(() => {});
      if (!image.hasAttribute("alt")) faults.push(`no alt text: ${image.src}`);
      if (!image.naturalWidth) faults.push(`not a picture: ${image.currentSrc || image.src}`);
    }
    return faults;
  },

  structure() {
    const faults = [];
    const headings = [...document.querySelectorAll("h1, h2, h3, h4, h5, h6")].filter(probes.shown);
    const first = headings.filter((each) => each.localName === "h1").length;
    if (first !== 1) faults.push(`${first} headings of the first rank`);
    let before = 0;
    for (const heading of headings) {
      const rank = Number(heading.localName[1]);
      if (rank > before + 1) faults.push(`rank ${rank} after ${before}: ${probes.name(heading)}`);
      before = rank;
    }
    const mains = [...document.querySelectorAll("main, [role=main]")].filter(probes.shown).length;
    if (mains !== 1) faults.push(`${mains} main landmarks`);
    if (!document.documentElement.lang) faults.push("no language");
    return faults;
  },

  cut() {
    const faults = [];
    for (const element of document.body.querySelectorAll("*")) {
      if (!element.textContent.trim() || !element.clientWidth) continue;
      if (!probes.shown(element) || probes.hiddenFromEyes(element)) continue;
      const style = getComputedStyle(element);
      const wide = /hidden|clip/.test(style.overflowX) && element.scrollWidth > element.clientWidth + 1;
      const high = /hidden|clip/.test(style.overflowY) && element.scrollHeight > element.clientHeight + 1;
      if (wide || high) faults.push(`cut off: ${probes.name(element)}`);
    }
    return faults;
  },

  room() {
    const faults = probes.cut();
    const whole = document.documentElement.scrollWidth;
    if (whole > innerWidth) faults.push(`${whole} px of page in a window of ${innerWidth} px`);
    const words = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    const range = document.createRange();
    while (words.nextNode()) {
      const holder = words.currentNode.parentElement;
      if (!words.currentNode.data.trim() || !probes.shown(holder)) continue;
      if (probes.hiddenFromEyes(holder) || probes.scrolls(holder) || holder.closest(".skip, svg")) continue;
      range.selectNodeContents(words.currentNode);
      const boxes = [...range.getClientRects()];
      if (boxes.some((box) => box.right > innerWidth + 1 || box.left < -1)) {
        faults.push(`words beyond the edge: ${probes.name(holder)}`);
      }
    }
    return faults;
  },

  // The colour that a fill of this style gives on a ground.
  painted(style, ground) {
    if (style.fill === "none") return ground;
    const fill = probes.colour(style.fill);
    const share = (fill[3] / 255) * style.fillOpacity * style.opacity;
    return ground.map((part, index) => part + share * (fill[index] - part));
  },

  // Words in drawings against what is painted beneath them; axe-core does not judge these.
  drawings() {
    const faults = [];
    for (const text of document.querySelectorAll("svg text")) {
      if (!probes.shown(text)) continue;
      text.scrollIntoView({ block: "center", inline: "center", behavior: "instant" });
      const box = text.getBoundingClientRect();
      const below = document.elementsFromPoint(box.x + box.width / 2, box.y + box.height / 2);
      const own = getComputedStyle(text);
      const ground = below.filter((each) => each instanceof SVGGeometryElement).reverse().reduce(
        (under, shape) => probes.painted(getComputedStyle(shape), under), probes.ground(text.ownerSVGElement));
      const ratio = probes.contrast(probes.painted(own, ground), ground);
      if (ratio < 4.5) faults.push(`${ratio.toFixed(1)}:1 in a drawing: ${probes.name(text)}`);
    }
    return faults;
  },

  // Of these elements, those that stand in a drawing or in something that is scrolled by itself.
  apart(selectors) {
    return selectors.filter((each) => {
      const element = document.querySelector(each);
      return element && (element.closest("svg") || probes.scrolls(element));
    });
  },

  // Words that are there and cannot be seen, for example until a script shows them.
  unseen() {
    const faults = [];
    for (const element of document.body.querySelectorAll("*")) {
      const own = [...element.childNodes].some((node) => node.nodeType === 3 && node.data.trim());
      if (!own || !probes.shown(element)) continue;
      let opacity = 1;
      for (let each = element; each; each = each.parentElement) opacity *= getComputedStyle(each).opacity;
      if (opacity < 0.2) faults.push(`not to be seen: ${probes.name(element)}`);
    }
    return faults;
  },

  // The lines of a page as read, without the words on buttons, which are nothing without a script.
  lines() {
    for (const button of document.querySelectorAll("button")) button.style.display = "none";
    return document.body.innerText.split("\n").map((line) => line.trim()).filter(Boolean);
  },

  moving() {
    return document.getAnimations()
      .filter((each) => each.playState === "running")
      .map((each) => `moves: ${probes.name(each.effect.target)}`);
  },

  // [red, green, blue, alpha] of any colour that a style sheet may name, each 0 to 255.
  colour(text) {
    const context = Object.assign(document.createElement("canvas"), { width: 1, height: 1 }).getContext("2d");
    context.fillStyle = text;
    context.fillRect(0, 0, 1, 1);
    return [...context.getImageData(0, 0, 1, 1).data];
  },

  // Contrast of two opaque colours. Source: WCAG 2.2, "relative luminance" and "contrast ratio".
  contrast(one, other) {
    const [low, high] = [one, other].map((colour) => {
      const parts = colour.slice(0, 3).map((part) => {
        const share = part / 255;
        return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
      });
      return 0.2126 * parts[0] + 0.7152 * parts[1] + 0.0722 * parts[2];
    }).sort((a, b) => a - b);
    return (high + 0.05) / (low + 0.05);
  },

  ground(element) {
    for (let each = element; each; each = each.parentElement) {
      const colour = probes.colour(getComputedStyle(each).backgroundColor);
      if (colour[3] === 255) return colour;
    }
    return probes.colour("canvas");
  },

  focusable() {
    const kinds = "a[href], button, input, select, textarea, summary, [tabindex]";
    const seen = new Set();
    return [...document.querySelectorAll(kinds)].filter((element) => {
      if (element.disabled || element.tabIndex < 0 || !probes.shown(element)) return false;
      if (element.type !== "radio") return true;
      // Of a group of radio buttons only one is a stop; arrows lead to the others.
      const group = [...document.querySelectorAll(`input[type=radio][name="${element.name}"]`)];
      const stop = group.find((each) => each.checked) || group[0];
      return element === stop && !seen.has(element.name) && seen.add(element.name);
    });
  },

  number() {
    const all = probes.focusable();
    all.forEach((element, index) => { element.dataset.stop = index; });
    return all.map(probes.name);
  },

  // Where the focus is: its number, and what is wrong with how that is shown.
  focus() {
    const element = document.activeElement;
    if (!element || element === document.body) return null;
    const label = element.labels && element.labels[0];
    const marks = [element, label, element.nextElementSibling].filter(Boolean).map((each) => {
      const style = getComputedStyle(each);
      const outline = style.outlineStyle === "none" ? 0 : parseFloat(style.outlineWidth);
      const shadow = style.boxShadow === "none" ? null : style.boxShadow.match(/^[a-z-]+\([^)]*\)/)[0];
      const colour = outline >= 2 ? style.outlineColor : shadow;
      return colour && probes.contrast(probes.colour(colour), probes.ground(each.parentElement));
    });
    const faults = [];
    const best = Math.max(0, ...marks);
    if (!best) faults.push(`no mark of the focus: ${probes.name(element)}`);
    // 3:1: WCAG 2.2, 1.4.11 (contrast of what is not text).
    else if (best < 3) faults.push(`the mark of the focus has ${best.toFixed(2)}:1: ${probes.name(element)}`);
    const box = (label && element.clientWidth <= 1 ? label : element).getBoundingClientRect();
    if (box.bottom <= 0 || box.top >= innerHeight || box.right <= 0 || box.left >= innerWidth || !box.width) {
      faults.push(`focus out of sight: ${probes.name(element)}`);
    }
    return { stop: element.dataset.stop === undefined ? null : Number(element.dataset.stop), faults };
  },

  // Where words in this name's direction share a line with others, and nothing keeps them apart.
  // Source for what does: HTML, "the bdi element" and "the dir attribute".
  mixed(name) {
    const words = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    const faults = [];
    let met = 0;
    while (words.nextNode()) {
      const holder = words.currentNode.parentElement;
      if (!words.currentNode.data.includes(name) || !probes.shown(holder)) continue;
      met += 1;
      const alone = words.currentNode.data.trim() === name;
      const apart = /isolate|plaintext/.test(getComputedStyle(holder).unicodeBidi);
      const block = getComputedStyle(holder).display !== "inline" && holder.textContent.trim() === name;
      if (!alone || !(apart || block)) faults.push(`not kept apart: ${probes.name(holder)}`);
    }
    return { met, faults };
  },

  print() {
    const faults = [];
    for (const nav of document.querySelectorAll("nav, .skip")) {
      if (probes.shown(nav)) faults.push(`printed: ${probes.name(nav)}`);
    }
    const white = [255, 255, 255, 255];
    for (const element of document.body.querySelectorAll("*")) {
      const own = [...element.childNodes].some((node) => node.nodeType === 3 && node.data.trim());
      if (!own || !probes.shown(element) || element.closest("svg") || probes.hiddenFromEyes(element)) continue;
      // Browsers leave backgrounds out of prints, so words have to stand on white paper.
      const ratio = probes.contrast(probes.colour(getComputedStyle(element).color), white);
      if (ratio < 4.5) faults.push(`${ratio.toFixed(1)}:1 on white paper: ${probes.name(element)}`);
    }
    return faults;
  },
};
