import type { AttributeValue, Scene, SceneChild, SceneNode } from '@shoreglass/figures';

const SVG = 'http://www.w3.org/2000/svg';

/** A scene as it stands in the page. */
export interface Drawn {
  readonly scene: Scene;
  readonly root: SVGElement;
}

/** Draws a scene into a host. What is drawn already is changed only where the new scene differs. */
export function drawScene(host: HTMLElement, scene: Scene, drawn: Drawn | undefined): Drawn {
  if (drawn && drawn.root.parentNode === host) {
    patchNode(drawn.root, drawn.scene, scene);
    return { scene, root: drawn.root };
  }
  const root = build(scene);
  host.replaceChildren(root);
  return { scene, root };
}

function build(node: SceneNode): SVGElement {
  const element = document.createElementNS(SVG, node.tag);
  for (const [name, value] of Object.entries(node.attributes)) setAttribute(element, name, value);
  for (const child of node.children) element.append(buildChild(child));
  return element;
}

function buildChild(child: SceneChild): Node {
  return typeof child === 'string' ? document.createTextNode(child) : build(child);
}

function patchNode(element: SVGElement, before: SceneNode, after: SceneNode): void {
  if (before === after) return;
  patchAttributes(element, before, after);
  const kept = Math.min(before.children.length, after.children.length);
  while (element.childNodes.length > kept) element.lastChild?.remove();
  after.children.forEach((child, index) => {
    if (index < kept)
      patchChild(element, index, { before: before.children[index] as SceneChild, after: child });
    else element.append(buildChild(child));
  });
}

function patchChild(
  parent: SVGElement,
  index: number,
  { before, after }: { before: SceneChild; after: SceneChild },
): void {
  const drawn = parent.childNodes[index] as ChildNode;
  if (typeof before === 'string' || typeof after === 'string') {
    if (before !== after) drawn.replaceWith(buildChild(after));
  } else if (before.tag === after.tag) patchNode(drawn as SVGElement, before, after);
  else drawn.replaceWith(build(after));
}

function patchAttributes(element: SVGElement, before: SceneNode, after: SceneNode): void {
  for (const [name, value] of Object.entries(after.attributes))
    if (before.attributes[name] !== value) setAttribute(element, name, value);
  for (const name of Object.keys(before.attributes))
    if (!(name in after.attributes)) element.removeAttribute(name);
}

/** Styles go through the object model: the content policy refuses style attributes as text. */
function setAttribute(element: SVGElement, name: string, value: AttributeValue): void {
  if (name === 'style') element.style.cssText = String(value);
  else if (name.startsWith('xml:'))
    element.setAttributeNS('http://www.w3.org/XML/1998/namespace', name, String(value));
  else if (name !== 'xmlns') element.setAttribute(name, String(value));
}
