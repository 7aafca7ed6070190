// Applies the chosen theme before the first paint, and keeps it.
(() => {
  const key = 'casewright-theme';
  const apply = (choice) => {
    if (choice === 'light' || choice === 'dark') document.documentElement.dataset.theme = choice;
    else delete document.documentElement.dataset.theme;
  };
  apply(localStorage.getItem(key));
  document.addEventListener('change', (event) => {
    const choice = event.target.dataset?.themeChoice;
    if (!choice) return;
    localStorage.setItem(key, choice);
    apply(choice);
  });
  new MutationObserver(() => {
    const now = localStorage.getItem(key) ?? 'system';
    document.querySelectorAll('[data-theme-choice]').forEach((box) => {
      if (!box.dataset.ready) {
        box.checked = box.dataset.themeChoice === now;
        box.dataset.ready = '1';
      }
    });
  }).observe(document.documentElement, { childList: true, subtree: true });
})();
