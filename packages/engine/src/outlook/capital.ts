/** A text that begins with a capital letter; pH stays as it is written. `derived`. */
export function capital(text: string): string {
  return text.startsWith('pH') ? text : text.charAt(0).toUpperCase() + text.slice(1);
}
