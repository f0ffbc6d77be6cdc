import type { Scene, SceneChild, SceneNode } from './scene.ts';

/** A scene as SVG text, escaped; the same scene always gives the same text. */
export function sceneToSvg(scene: Scene): string {
  return nodeToSvg(scene);
}

function nodeToSvg(node: SceneNode): string {
  const attributes = Object.entries(node.attributes)
    .map(([name, value]) => ` ${name}="${escapeAttribute(String(value))}"`)
    .join('');
  if (node.children.length === 0) return `<${node.tag}${attributes}/>`;
  return `<${node.tag}${attributes}>${node.children.map(childToSvg).join('')}</${node.tag}>`;
}

function childToSvg(child: SceneChild): string {
  return typeof child === 'string' ? escapeText(child) : nodeToSvg(child);
}

function escapeText(text: string): string {
  return withoutControls(text).replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
}

function escapeAttribute(text: string): string {
  return escapeText(text).replaceAll('"', '&quot;');
}

/** Characters that XML 1.0 does not allow anywhere (https://www.w3.org/TR/xml/#charsets) are dropped. */
function withoutControls(text: string): string {
  return Array.from(text)
    .filter((character) => {
      const code = character.codePointAt(0) ?? 0;
      if (code < 0x20) return code === 0x9 || code === 0xa || code === 0xd;
      return !(code >= 0xd800 && code <= 0xdfff) && code !== 0xfffe && code !== 0xffff;
    })
    .join('');
}
