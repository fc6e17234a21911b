// What a shop does with an answer: the length goes in the basket, by whole metres or feet, rounded up.
const basket = document.getElementById("basket");

const goods = {
  rode_to_carry: ({ rode_aboard }) => `Rode, ${whole(rode_aboard)}`,
  rode_to_let_out: ({ rode_out }) => `Rode, ${whole(rode_out)}`,
  anchor_size: ({ anchor_mass }) => anchor_mass && `Anchor, ${anchor_mass.shown} or more`,
  chain_and_line: ({ parts, next_sizes }) => parts.map(({ part, size }) => {
    const next = next_sizes.find((one) => one.part === part);
    return `${part}, ${(next?.size_metric ?? size).shown}`;
  }).join("; "),
};

/** Return a length in whole units, never less than the answer. */
function whole({ value, unit }) {
  return `${Math.ceil(value - 1e-9)} ${unit}`;
}

document.querySelector("anchor-counter").addEventListener("choose", ({ detail }) => {
  const text = goods[detail.question]?.(detail.answer.results);
  if (!text) return;
  document.getElementById("basket-empty").hidden = true;
  const line = document.createElement("li");
  line.textContent = text;
  basket.append(line);
});
