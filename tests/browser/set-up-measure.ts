import type { Page } from 'playwright-core';

/**
 * What is wrong with the screen as it stands: words or buttons over the edge of the glass, of their button, of each other, a page
 * that scrolls, a target under 64 px. Lists that scroll by design (class `list`) may run over their own lower edge only.
 */
export const faultsOnScreen = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const faults: string[] = [];
    const { innerWidth: width, innerHeight: height } = window;
    const main = document.querySelector('.set-up');
    if (!main) return ['no set-up on screen'];
    const root = document.documentElement;
    if (root.scrollHeight > height + 1) faults.push(`the page is ${root.scrollHeight} px high`);
    if (root.scrollWidth > width + 1) faults.push(`the page is ${root.scrollWidth} px wide`);

    const isHidden = (el: Element): boolean => {
      const style = getComputedStyle(el);
      return style.visibility === 'hidden' || style.clipPath !== 'none' || style.display === 'none';
    };
    const scrolls = (el: Element) => el.closest('.list');
    interface Box {
      readonly what: string;
      readonly of: Element;
      readonly rect: DOMRect;
    }
    const words: Box[] = [];
    const walker = document.createTreeWalker(main, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      const of = node.parentElement;
      if (!of || !node.textContent?.trim()) continue;
      let hidden = false;
      for (let el: Element | null = of; el && el !== main; el = el.parentElement) hidden ||= isHidden(el);
      if (hidden) continue;
      const range = document.createRange();
      range.selectNodeContents(node);
      for (const rect of range.getClientRects())
        if (rect.width > 0) words.push({ what: `“${node.textContent.trim().slice(0, 30)}”`, of, rect });
    }
    const targets: Box[] = [...main.querySelectorAll('button, a, input')].flatMap((of) => {
      const rect = of.getBoundingClientRect();
      const what = `[${(of.textContent || of.getAttribute('aria-label') || of.tagName).trim().slice(0, 30)}]`;
      return isHidden(of) || rect.width === 0 ? [] : [{ what, of, rect }];
    });

    const say = (n: number) => Math.round(n);
    for (const { what, of, rect } of [...words, ...targets]) {
      if (scrolls(of)) continue;
      if (rect.left < -0.5 || rect.top < -0.5 || rect.right > width - 10 || rect.bottom > height + 0.5)
        faults.push(
          `${what} is off the glass: ${say(rect.left)},${say(rect.top)} to ${say(rect.right)},${say(rect.bottom)}`,
        );
    }
    for (const { what, of, rect } of words) {
      const within = of.closest('button, a, .panel');
      const outer = within?.getBoundingClientRect();
      // A line's box is taller than its letters, by about a sixth above and below.
      const air = rect.height / 6 + 1;
      if (
        outer &&
        (rect.left < outer.left - 1 ||
          rect.right > outer.right + 1 ||
          rect.top + air < outer.top ||
          rect.bottom - air > outer.bottom)
      )
        faults.push(`${what} runs out of its button`);
    }
    for (const { what, of, rect } of targets) {
      if (of.classList.contains('sentence') || of.classList.contains('drawing-slot')) continue;
      if (rect.width < 63.5 || rect.height < 63.5)
        faults.push(`${what} is ${say(rect.width)} by ${say(rect.height)} px`);
    }
    const lettersOf = ({ left, top, width, height }: DOMRect) =>
      new DOMRect(left, top + height / 6, width, height * (2 / 3));
    const overlap = (a: DOMRect, b: DOMRect) =>
      Math.min(a.right, b.right) - Math.max(a.left, b.left) > 1.5 &&
      Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top) > 1.5;
    for (const [i, a] of targets.entries())
      for (const b of targets.slice(i + 1))
        if (
          !scrolls(a.of) &&
          !scrolls(b.of) &&
          !a.of.contains(b.of) &&
          !b.of.contains(a.of) &&
          overlap(a.rect, b.rect)
        )
          faults.push(`${a.what} overlaps ${b.what}`);
    for (const word of words)
      for (const target of targets)
        if (
          !scrolls(word.of) &&
          !scrolls(target.of) &&
          !target.of.contains(word.of) &&
          overlap(lettersOf(word.rect), target.rect)
        )
          faults.push(`${word.what} lies under ${target.what}`);
    for (const el of main.querySelectorAll('*'))
      if (
        !scrolls(el) &&
        el.scrollHeight > el.clientHeight + 2 &&
        /auto|scroll/.test(getComputedStyle(el).overflowY)
      )
        faults.push(`<${el.tagName.toLowerCase()} class="${el.getAttribute('class') ?? ''}"> scrolls`);
    return [...new Set(faults)];
  });

/** The smallest type on screen in CSS px, drawings included, and what is written in it. */
export const smallestType = (page: Page): Promise<{ px: number; what: string }> =>
  page.evaluate(() => {
    let smallest = { px: Number.POSITIVE_INFINITY, what: '' };
    for (const el of document.querySelectorAll<HTMLElement | SVGElement>('.set-up *')) {
      const text = [...el.childNodes]
        .filter((n) => n.nodeType === 3)
        .map((n) => n.textContent)
        .join('')
        .trim();
      const style = getComputedStyle(el);
      if (!text || el.closest('.hidden-words, .long') || el.getClientRects().length === 0) continue;
      const svg = el instanceof SVGTextElement ? el.ownerSVGElement : null;
      const scale = svg ? (svg.getScreenCTM()?.a ?? 1) : 1;
      const px = Number.parseFloat(style.fontSize) * scale;
      if (px < smallest.px) smallest = { px, what: text.slice(0, 40) };
    }
    return smallest;
  });

/**
 * Every text on screen, of drawings too, whose colour stands out less than 7:1 (WCAG 2.2, 1.4.6) from what is painted behind it, by
 * day and by night: "night, Pass: 4.12". What is behind is asked of the browser, point by point along the text.
 */
export const lowContrast = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const light = (colour: string) => {
      const [r = 0, g = 0, b = 0] = (colour.match(/[\d.]+/g) ?? []).map((v) => {
        const c = Number(v) / 255;
        return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
      });
      return 0.2126 * r + 0.7152 * g + 0.0722 * b;
    };
    const isClear = (colour: string) => /^(none|transparent)$|rgba\(.*, 0\)$/.test(colour);
    const paintOf = (el: Element) => {
      const { fill, backgroundColor } = getComputedStyle(el);
      const isShape = el instanceof SVGGeometryElement;
      return isShape ? fill : backgroundColor;
    };
    const grounds = (el: Element): string[] => {
      const { left, top, width, height } = el.getBoundingClientRect();
      return [0.02, 0.25, 0.5, 0.75, 0.98].flatMap((share) => {
        const [x, y] = [left + share * width, top + height / 2];
        const stack = document.elementsFromPoint(x, y);
        // Scrolled out of sight, it is measured where it can be seen: against the ground of its own button.
        const behind = stack.includes(el)
          ? stack.slice(stack.indexOf(el))
          : [
              el,
              ...(function* () {
                for (let at = el.parentElement; at; at = at.parentElement) yield at;
              })(),
            ];
        return [behind.map(paintOf).find((paint) => !isClear(paint)) ?? 'rgb(255, 255, 255)'];
      });
    };
    const { dataset } = document.documentElement;
    const was = dataset.look;
    const found: string[] = [];
    for (const look of ['day', 'night']) {
      dataset.look = look;
      let seen = 0;
      for (const el of document.querySelectorAll('.set-up *')) {
        const text = [...el.childNodes]
          .filter((n) => n.nodeType === 3)
          .map((n) => n.textContent)
          .join('')
          .trim();
        if (!text || el.closest('.hidden-words') || el.getClientRects().length === 0) continue;
        seen += 1;
        const ink = light(el instanceof SVGElement ? getComputedStyle(el).fill : getComputedStyle(el).color);
        for (const ground of new Set(grounds(el))) {
          const [a = 0, b = 0] = [ink, light(ground)].sort((x, y) => y - x);
          const ratio = (a + 0.05) / (b + 0.05);
          if (ratio < 7) found.push(`${look}, “${text.slice(0, 30)}” on ${ground}: ${ratio.toFixed(2)}`);
        }
      }
      if (seen < 2) found.push(`${look}: only ${seen} texts seen`);
    }
    dataset.look = was;
    return found;
  });
