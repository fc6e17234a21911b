// A client whose types are generated from the document: it compiles under strict, and talks to a running server.
import createClient from "openapi-fetch";
import type { components, paths } from "./work/v1.js";

declare const process: { argv: string[]; exit(code: number): never };

const client = createClient<paths>({ baseUrl: process.argv[2] ?? "" });
type Boat = components["schemas"]["Boat"];
const gullbris: Boat = { name: "Gullbris", boat_length: "8.4 m", bow_height: "1.1 m" };

function same(what: string, found: unknown, wanted: unknown): void {
  if (found !== wanted) {
    console.error(`${what}: ${String(found)} is not ${String(wanted)}`);
    process.exit(1);
  }
}

const asked = await client.GET("/v1/rode-to-let-out", { params: { query: { depth: "12 ft", bow_height: "5 ft", tide_rise: "3 ft" } } });
if (!asked.data) throw new Error(asked.error.detail);
const rode: components["schemas"]["Quantity"] = asked.data.results.rode_out;
same("rode in feet", rode.value, 140);
same("the constant of the question", asked.data.question satisfies "rode_to_let_out", "rode_to_let_out");
same("no result that was not asked for", asked.data.results.enough, undefined);

const posted = await client.POST("/v1/swing-radius", {
  body: { rode_out: { value: 40, unit: "m" }, depth: { low: 5, high: 6, unit: "m" }, boat: gullbris, units: "metric" },
});
if (!posted.data) throw new Error(posted.error.detail);
same("where the length came from", posted.data.read.boat_length?.from, "boat");
same("a range has a low end", typeof posted.data.results.swing_radius.low, "number");

const refused = await client.POST("/v1/rode-to-let-out", { body: { depth: "12" } });
if (!refused.error) throw new Error("a bare number was taken");
same("what was wrong", refused.error.errors[0]?.code, "bare_number");

const reply = await client.POST("/v1/ask", { body: { text: "How much rode in 12 ft of water?", boat: { bow_height: "5 ft" } } });
if (!reply.data) throw new Error(reply.error.detail);
if (reply.data.status === "answered" && reply.data.question === "rode_to_let_out") {
  same("a reply narrows to its type", reply.data.results.rode_out.unit, "ft");
} else {
  same("the reply", reply.data.status, "answered");
}

const listed = await client.GET("/v1/questions");
same("the catalogue has two examples each", listed.data?.every((one) => one.examples.length >= 2), true);
console.log("the generated client works");
