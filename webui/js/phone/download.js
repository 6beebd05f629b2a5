// A file made here and handed to the phone, without a server.
export const download = (name, text, type) => {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(new Blob([text], { type }));
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000); // some browsers read it a while after the click
};

// As a calendar on the wall here has it: 2026-11-29.
export const two = (count) => String(count).padStart(2, "0");
export const today = (now = new Date()) => `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
