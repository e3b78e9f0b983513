/** Lets a part of a drawing take the focus. Attributes of SVG keep their case, and only this spelling is one of them. */
export const FOCUSABLE: object = { tabindex: 0 };
