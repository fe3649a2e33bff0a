/** What the lines are looked at with: frequency, length of the run, units, order, words to find. */
import type { LineComparison, LineUnits } from "@feedpath/report";
import { lengthText } from "@feedpath/report";
import { type ReactNode, useId } from "react";
import { sayFrequency } from "../ui/say";
import type { LinesAsked, ParameterProblem } from "../worker/messages";
import { type Order, orders } from "./order";

interface LinesAskedWithProps {
  readonly asked: LinesAsked;
  readonly onAsked: (asked: LinesAsked) => void;
  readonly comparison: LineComparison;
  readonly problems: readonly ParameterProblem[];
  readonly order: Order;
  readonly onOrder: (order: Order) => void;
  readonly sought: string;
  readonly onSought: (sought: string) => void;
}

export function LinesAskedWith(props: LinesAskedWithProps) {
  const { asked, onAsked, comparison, problems, order, onOrder, sought, onSought } = props;
  const { at, length } = comparison;
  const problemOf = (name: string) => problems.find((problem) => problem.name === name)?.message;
  const run = length === null ? "none" : lengthText(length, asked.units);
  return (
    <div className="fields">
      <TextField
        title="frequency"
        value={asked.at}
        says={problemOf("at")}
        otherwise={asked.at.trim() === "" ? `empty: the station's, ${sayFrequency(at)}` : "as typed"}
        onValue={(text) => onAsked({ ...asked, at: text })}
      />
      <TextField
        title="length of the run"
        value={asked.length}
        says={problemOf("length")}
        otherwise={asked.length.trim() === "" ? `empty: the station's longest, ${run}` : "as typed"}
        onValue={(text) => onAsked({ ...asked, length: text })}
      />
      <TextField
        title="find"
        value={sought}
        says={undefined}
        otherwise="words such as 75, foam, window"
        onValue={onSought}
      />
      <Choice title="order" value={order} onValue={(value) => onOrder(value as Order)}>
        {orders.map((one) => (
          <option key={one.order} value={one.order}>
            {one.says}
          </option>
        ))}
      </Choice>
      <Choice title="units" value={asked.units} onValue={(value) => onAsked({ ...asked, units: value as LineUnits })}>
        <option value="metric">metres, kilograms</option>
        <option value="imperial">feet, pounds</option>
      </Choice>
    </div>
  );
}

interface TextFieldProps {
  readonly title: string;
  readonly value: string;
  readonly says: string | undefined;
  readonly otherwise: string;
  readonly onValue: (text: string) => void;
}

function TextField({ title, value, says, otherwise, onValue }: TextFieldProps) {
  const id = useId();
  return (
    <div className="field">
      <label htmlFor={id}>{title}</label>
      <input
        id={id}
        value={value}
        spellCheck={false}
        autoComplete="off"
        aria-invalid={says !== undefined}
        aria-describedby={`${id}-says`}
        onChange={(event) => onValue(event.target.value)}
      />
      <p id={`${id}-says`} className={says ? "value-problem" : "says"}>
        {says ?? otherwise}
      </p>
    </div>
  );
}

interface ChoiceProps {
  readonly title: string;
  readonly value: string;
  readonly onValue: (value: string) => void;
  readonly children: ReactNode;
}

function Choice({ title, value, onValue, children }: ChoiceProps) {
  const id = useId();
  return (
    <div className="field">
      <label htmlFor={id}>{title}</label>
      <select id={id} value={value} onChange={(event) => onValue(event.target.value)}>
        {children}
      </select>
    </div>
  );
}
