export { workbookOf } from "./workbook-of.js";
