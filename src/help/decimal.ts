// The decimal sign of the formulas on the help pages: that of the reader's language, until another was chosen.
const KEPT = 'bosswright-help-decimal';
const COMMA = ',';

function kept(): string | null {
  try {
    return localStorage.getItem(KEPT);
  } catch {
    return null;
  }
}

function keep(decimal: string): void {
  try {
    localStorage.setItem(KEPT, decimal);
  } catch {
    // without a store the next page begins with the sign of the language
  }
}

const page = document.documentElement;
page.dataset['formulas'] = kept() ?? ((1.5).toLocaleString(navigator.language).includes(COMMA) ? COMMA : '.');

document.addEventListener('DOMContentLoaded', () => {
  const button = document.getElementById('decimal');
  if (button === null || document.querySelector('[data-decimal]') === null) return;
  const show = (): void => button.setAttribute('aria-pressed', String(page.dataset['formulas'] === COMMA));
  button.hidden = false;
  button.addEventListener('click', () => {
    page.dataset['formulas'] = page.dataset['formulas'] === COMMA ? '.' : COMMA;
    keep(page.dataset['formulas']);
    show();
  });
  show();
});
