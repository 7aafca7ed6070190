// What happens when the program is stopped or killed while a page is open: the page waits, comes back by itself, and puts a figure
// that was being typed back into its field.
(() => {
  const key = 'casewright-typing';
  const nameOf = (field) => field.getAttribute('aria-label') || document.querySelector(`label[for="${field.id}"]`)?.textContent?.trim() || '';
  const isText = (field) => field instanceof HTMLInputElement && !/^(checkbox|radio|range|file)$/.test(field.type);
  let connected = true;

  document.addEventListener('input', (event) => {
    if (isText(event.target) && nameOf(event.target)) {
      localStorage.setItem(key, JSON.stringify({ path: location.pathname, name: nameOf(event.target), text: event.target.value, was: event.target.defaultValue }));
    }
  });
  // A figure is taken when its field says so; whether the program heard it shows a moment later.
  document.addEventListener('change', (event) => {
    if (isText(event.target)) setTimeout(() => { if (connected) localStorage.removeItem(key); }, 1500);
  });
  document.addEventListener('keydown', (event) => {
    if (event.key === 'Escape') localStorage.removeItem(key);
  });

  const modal = document.getElementById('components-reconnect-modal');
  let coming = false;
  const comeBack = async () => {
    if (coming) return;
    coming = true;
    for (;;) {
      try {
        const answer = await fetch('/mark.svg', { cache: 'no-store' });
        if (answer.ok) break;
      } catch { /* still away */ }
      await new Promise((done) => setTimeout(done, 700));
    }
    location.reload();
  };
  modal.addEventListener('components-reconnect-state-changed', (event) => {
    const state = event.detail.state;
    connected = state === 'hide';
    modal.classList.toggle('shown', !connected);
    if (state === 'failed' || state === 'rejected') comeBack();
  });

  const restore = () => {
    const kept = JSON.parse(localStorage.getItem(key) ?? 'null');
    if (!kept || kept.path !== location.pathname) return true;
    const field = [...document.querySelectorAll('input')].find((f) => isText(f) && nameOf(f) === kept.name);
    if (!field) return false;
    if (field.value === kept.text || field.disabled) {
      localStorage.removeItem(key);
      return true;
    }

    field.value = kept.text;
    field.classList.add('kept');
    field.title = 'You were typing this; Enter takes it, Escape leaves it';
    field.focus();
    // A script that fills a field is no change of it, so Enter has to say so. What is kept stays kept until it is taken or left.
    const settle = (event) => {
      if (event.key !== 'Enter' && event.key !== 'Escape') return;
      field.removeEventListener('keydown', settle);
      field.classList.remove('kept');
      field.title = '';
      if (event.key === 'Escape') field.value = field.defaultValue;
      else if (field.value === kept.text) field.dispatchEvent(new Event('change', { bubbles: true }));
    };
    field.addEventListener('keydown', settle);
    return true;
  };
  const watch = setInterval(() => { if (restore()) clearInterval(watch); }, 300);
  setTimeout(() => clearInterval(watch), 20000);
})();
