/** On a phone: three places of the page, one at a time. */
export type Place = "answer" | "station" | "hand over";

const places: readonly { readonly place: Place; readonly title: string }[] = [
  { place: "answer", title: "Answer" },
  { place: "station", title: "Station" },
  { place: "hand over", title: "Hand over" },
];

interface PhoneBarProps {
  readonly place: Place;
  readonly onPlace: (place: Place) => void;
}

export function PhoneBar({ place, onPlace }: PhoneBarProps) {
  return (
    <nav className="phone-bar" aria-label="Places of this page">
      {places.map((entry) => (
        <button
          key={entry.place}
          type="button"
          aria-current={entry.place === place ? "page" : undefined}
          onClick={() => onPlace(entry.place)}
        >
          {entry.title}
        </button>
      ))}
    </nav>
  );
}
