import { expect, it } from "vitest";
import { describeWith } from "#ci/program.js";
import { onDevice, opened } from "./app.js";

describeWith("Chromium", (executablePath) => {
  it("gives picture, width and yarn of the napkins once stripes, reed and length are typed; asks nothing of any other address", async () => {
    await onDevice(executablePath, async (device, address) => {
      const asked: string[] = [];
      device.on("request", (request) => asked.push(request.url()));
      const page = await opened(device, address, "shelf");
      await page.getByRole("button", { name: "Plan a new warp" }).click();
      await page.getByRole("button", { name: "Write it as a list" }).click();
      await page
        .getByRole("textbox", { name: /Runs, number first/u })
        .fill(
          "24 natural, { mirror: [40 madder, { repeat: 3, of: [12 natural, 6 indigo] }, 66 natural], middle: twice }, 24 natural",
        );
      await page.getByRole("button", { name: "Show it as rows" }).click();
      await page.getByLabel("dents", { exact: true }).fill("10");
      await page.getByLabel("ends in a dent").fill("2");
      await page.getByLabel("length", { exact: true }).fill("5.57");
      await page.keyboard.press("Tab");
      // 252, 80 and 36 ends × 5.57 yd; 368 ends ÷ 2 ÷ 10 = 18.4 in.
      await page.getByText("1403.64 yd").waitFor();
      const seen = (await page.locator("aside").textContent()) ?? "";
      for (const number of ["368", "18⅜ in", "1403.64 yd", "445.6 yd", "200.52 yd"]) expect(seen).toContain(number);
      await page.reload();
      await page.getByText("200.52 yd").waitFor();
      expect(asked.length).toBeGreaterThan(10);
      expect(asked.filter((url) => !url.startsWith(address) && !/^(?:data|blob):/u.test(url))).toEqual([]);
    });
  });
});
