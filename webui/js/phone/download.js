// A file made here and handed to the phone, without a server.
export const download = (name, text, type) => {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(new Blob([text], { type }));
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000); // some browsers read it a while after the click
};

export const today = () => new Date().toISOString().slice(0, 10);
