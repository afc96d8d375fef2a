/** For a button beside a box: a press leaves the focus, and a phone's keyboard, where they are. */
export const leaveFocus = (event: MouseEvent): void => event.preventDefault();
