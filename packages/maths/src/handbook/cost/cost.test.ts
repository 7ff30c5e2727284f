import { expect, it } from "vitest";
import { cottonCount, currency, pounds, yards } from "../../units/index.js";
import { yarnMass } from "../yarn/index.js";
import { yarnCost } from "./index.js";

const pence = currency("pence");

it("yarn by its count costs what its mass costs", () => {
  const mass = yarnMass({ length: yards(2520 * 78), count: cottonCount(32) });
  expect(yarnCost({ yarn: mass, price: pence(7), priceMass: pounds(1) }).in(pence)).toBeCloseTo(51.1875, 10);
});
