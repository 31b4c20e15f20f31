/** Preset files by path below presets/, such as `materials/pa12.yaml`, as text. */
export type PresetTexts = Readonly<Record<string, string>>;
