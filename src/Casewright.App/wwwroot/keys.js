// Keys that work anywhere on a job's page, outside fields.
let handler = null;

export function listen(page) {
  stop();
  handler = (event) => {
    const field = event.target.closest('input, textarea, select, [contenteditable]');
    const undo = (event.ctrlKey || event.metaKey) && event.key.toLowerCase() === 'z';
    if (field && !(event.key === 'Escape')) return;
    if (undo) {
      event.preventDefault();
      page.invokeMethodAsync('Key', event.shiftKey ? 'redo' : 'undo');
    } else if (!event.ctrlKey && !event.metaKey && !event.altKey && (/^[1-8?]$/.test(event.key) || event.key === 'Escape')) {
      page.invokeMethodAsync('Key', event.key);
    }
  };
  document.addEventListener('keydown', handler);
}

export function stop() {
  if (handler) document.removeEventListener('keydown', handler);
  handler = null;
}
