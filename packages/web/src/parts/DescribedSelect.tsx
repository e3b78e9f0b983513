import { useSelect } from 'downshift';
import { useEffect, useRef } from 'react';

/** One thing to choose: what it is called, and a line that says what choosing it means. */
export type Described = { readonly value: string; readonly text: string; readonly hint: string | null };

type DescribedSelectProps = {
  readonly label: string;
  readonly value: string;
  readonly options: readonly Described[];
  readonly onChange: (value: string) => void;
};

/**
 * A choice of one, each with a line below its name: what a native list cannot show. Its keys, its names and its focus
 * are those of the headless library of the pages that are not the bedside; the bedside has native lists.
 */
export function DescribedSelect({ label, value, options, onChange }: DescribedSelectProps) {
  const chosen = options.find((one) => one.value === value) ?? null;
  const list = useSelect<Described>({
    items: [...options],
    itemToString: (one) => one?.text ?? '',
    itemToKey: (one) => one?.value ?? '',
    selectedItem: chosen,
    onSelectedItemChange: ({ selectedItem }) =>
      selectedItem === null ? undefined : onChange(selectedItem.value),
  });
  const { htmlFor: labelled, ...names } = list.getLabelProps();
  const menu = useRef<HTMLUListElement>(null);
  useEffect(() => {
    if (list.isOpen) menu.current?.scrollIntoView({ block: 'nearest' });
  }, [list.isOpen]);
  return (
    <div className="field described-field">
      <label className="label" htmlFor={labelled} {...names}>
        {label}
      </label>
      <div className="described" {...list.getToggleButtonProps()}>
        <span className="described-text">{chosen?.text ?? ''}</span>
        <span aria-hidden="true">▾</span>
      </div>
      <ul className="described-list" hidden={!list.isOpen} {...list.getMenuProps({ ref: menu })}>
        {list.isOpen
          ? options.map((one, index) => (
              <li
                key={one.value}
                className="described-item"
                data-at={list.highlightedIndex === index}
                {...list.getItemProps({ item: one, index })}
              >
                <span className="described-text">{one.text}</span>
                {one.hint === null ? null : <span className="described-hint">{one.hint}</span>}
              </li>
            ))
          : null}
      </ul>
    </div>
  );
}
