/** Text broken into lines of at most `width` characters, each after an indent; the first after `first`. */
export function wrapped(text: string, width: number, indent: string, first = indent): string {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(' ')) {
    if (line && line.length + 1 + word.length > width - indent.length) {
      lines.push(line);
      line = word;
    } else line = line ? `${line} ${word}` : word;
  }
  return [...lines, line].map((part, at) => (at === 0 ? first : indent) + part).join('\n');
}
