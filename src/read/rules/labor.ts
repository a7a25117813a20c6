import { itemKind } from "../item.ts";
import { type Rule, state } from "../note.ts";

const labor = /^(?:labor|ot|overtime|timesheet|billable|bill|log|hrs|onsite|straight|me)$/;

/** "put me down for 3 hours", "2.5 hrs labor", "1 hour overtime" */
export const laborRule: Rule = {
  name: "<number> hours labor",
  heads: "labor|ot|overtime|timesheet|billable|bill|log|hrs|onsite|straight|put",
  needs: "number",
  apply: (note) => {
    const { items } = note;
    items.forEach((item, i) => {
      if (item.kind !== itemKind.number || item.owner !== undefined || item.unit?.figure !== "h")
        return;
      const near = items.slice(Math.max(0, i - 4), i + 4);
      const down =
        near.some((word) => word.text === "put") &&
        near.some((word) => word.text === "me") &&
        near.some((word) => word.text === "down");
      const said = near.some(
        (word) => word.text !== "me" && labor.test(word.text) && word.kind !== itemKind.number,
      );
      if (!down && !said) return;
      const overtime = near.some((word) => word.text === "ot" || word.text === "overtime");
      state(
        note,
        laborRule.name,
        [i, i + 1],
        overtime
          ? { kind: "labor", hours: item.value, overtime: true }
          : { kind: "labor", hours: item.value },
      );
    });
  },
};
