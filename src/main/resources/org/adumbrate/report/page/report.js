'use strict';
document.documentElement.classList.add('live');
document.addEventListener('DOMContentLoaded', () => {
  for (const figure of document.querySelectorAll('.swipe')) {
    const input = figure.querySelector('input');
    const output = figure.querySelector('output');
    const show = () => {
      figure.style.setProperty('--at', input.value + '%');
      input.setAttribute('aria-valuetext', 'lines over ' + input.value + ' percent of the width');
      output.value = input.value + '\u00a0%';
    };
    input.addEventListener('input', show);
    show();
  }

  const viewer = document.querySelector('.viewer');
  const pane = viewer.querySelector('.window');
  const buttons = [...viewer.querySelectorAll('button')];
  const sizes = buttons.map((button) => button.dataset.zoom);

  // x and y: the place, as a share of the sheet, that is to stay in the middle
  function enlarge(zoom, x, y) {
    viewer.dataset.zoom = zoom;
    buttons.forEach((button) => button.setAttribute('aria-pressed', String(button.dataset.zoom === zoom)));
    pane.scrollLeft = x * pane.scrollWidth - pane.clientWidth / 2;
    pane.scrollTop = y * pane.scrollHeight - pane.clientHeight / 2;
  }

  function aboutMiddle(zoom) {
    enlarge(zoom, (pane.scrollLeft + pane.clientWidth / 2) / pane.scrollWidth,
      (pane.scrollTop + pane.clientHeight / 2) / pane.scrollHeight);
  }

  function step(by) {
    const next = sizes.indexOf(viewer.dataset.zoom) + by;
    aboutMiddle(sizes[Math.max(0, Math.min(sizes.length - 1, next))]);
  }

  buttons.forEach((button) => button.addEventListener('click', () => aboutMiddle(button.dataset.zoom)));
  pane.addEventListener('click', (event) => {
    const box = pane.querySelector('img').getBoundingClientRect();
    const at = sizes.indexOf(viewer.dataset.zoom);
    enlarge(sizes[(at + 1) % sizes.length], (event.clientX - box.left) / box.width, (event.clientY - box.top) / box.height);
  });
  pane.addEventListener('keydown', (event) => {
    if (event.key === '+' || event.key === '=') {
      step(1);
    } else if (event.key === '-' || event.key === '−') {
      step(-1);
    }
  });
});
