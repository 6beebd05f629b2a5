// What the page's scripts know of the document and TypeScript does not: a selector names what it finds.
interface ParentNode {
  querySelector(selectors: string): any;
  querySelectorAll(selectors: string): NodeListOf<any>;
}
interface Element {
  closest(selectors: string): any;
}
interface EventTarget {
  inputMode: string;
  parentElement: HTMLElement;
  closest(selectors: string): any;
  matches(selectors: string): boolean;
  name: string;
  value: string;
}
interface Node {
  cloneNode(subtree?: boolean): any;
}
interface HTMLFormControlsCollection {
  namedItem(name: string): any;
}
interface Window {
  webkitAudioContext: typeof AudioContext;
  BarcodeDetector: any;
}
declare const DECLARED: Record<string, { picks?: Record<string, string>, beside?: Record<string, string[]>, measured?: string[], anew?: string[] }>;
declare const LANGUAGES: Record<string, { label: string, worker: string, offer?: string }>;
