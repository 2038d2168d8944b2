/**
 * What the page of a part does beside the element: it names the part, by a plain `fetch`, and
 * puts into the basket what the element offers.
 */

const page = document.querySelector('main');
const { service, part } = page.dataset;

page.addEventListener('add', ({ detail }) => {
  const lines = detail.map(({ sku, packs, name }) => {
    const line = document.createElement('li');
    // Without a number of packs the customer says how many.
    line.textContent = `${packs ?? 'some'} x ${sku ?? 'no code'}: ${name}`;
    return line;
  });
  document.querySelector('#basket').append(...lines);
});

const answer = await fetch(`${service}/v1/parts/${encodeURIComponent(part)}`);
const said = await answer.json();
if (answer.ok) {
  document.querySelector('h1').textContent = said.name;
  const numbers = said.numbers.map(({ number }) => number);
  document.querySelector('#numbers').textContent = numbers.join(', ');
} else {
  // A problem by RFC 9457: its sentence is meant for people.
  document.querySelector('#numbers').textContent = said.detail;
}
