// Text put into what Vue reads as a template: marks of HTML, and the braces of an expression.
export const escapedForVue = (text) => text.replace(/[&<>"{}]/gu, (mark) => `&#${mark.codePointAt(0)};`);
