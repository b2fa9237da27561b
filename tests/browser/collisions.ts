// Which words of the pictures on a page lie on each other, stick out of their picture, or are too small to read? Measured in
// the browser by the boxes of their text.
import type { Page } from "playwright-core";

/** Runs in the page: each pair of words that overlap by more than a hair, each word outside its picture. */
const measure = `(() => {
  const hair = 0.75;
  return [...document.querySelectorAll("svg[role=img]")].flatMap((svg) => {
    const name = svg.querySelector("title").id;
    const all = svg.getBoundingClientRect();
    const texts = [...svg.querySelectorAll("text")].map((text) => ({ text: text.textContent, box: text.getBoundingClientRect() }));
    const outside = texts
      .filter(({ box }) => box.left < all.left - 1 || box.right > all.right + 1 || box.top < all.top - 1 || box.bottom > all.bottom + 1)
      .map(({ text }) => name + ": outside: " + text);
    const pairs = texts.flatMap((one, i) =>
      texts.slice(i + 1).filter((other) => {
        const wide = Math.min(one.box.right, other.box.right) - Math.max(one.box.left, other.box.left);
        const high = Math.min(one.box.bottom, other.box.bottom) - Math.max(one.box.top, other.box.top);
        // Lines of text stand closer than their boxes, which have room for accents above and below.
        return wide > hair && high > 0.28 * Math.min(one.box.height, other.box.height);
      }).map((other) => name + ": " + one.text + " | " + other.text));
    return [...outside, ...pairs];
  });
})()`;

/** The collisions on a page as it stands. */
export function collisions(page: Page): Promise<string[]> {
  return page.evaluate<string[]>(measure);
}
