interface PictureInputProps {
  readonly text: string;
  readonly take: (file: File) => void;
}

/** A button that asks for a picture from this device. */
export function PictureInput({ text, take }: PictureInputProps) {
  return (
    <label class="button open-button">
      {text}
      <input
        class="unseen"
        type="file"
        accept="image/png,image/jpeg,image/webp,image/gif,image/bmp"
        aria-label={text}
        onChange={(event) => {
          const input = event.currentTarget;
          const file = input.files?.[0];
          if (file) take(file);
          input.value = '';
        }}
      />
    </label>
  );
}
