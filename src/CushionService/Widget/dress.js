/** Drawings to choose by that can be wrong, as a field can: their name is seen, and what is wrong leads to the one chosen. */
export function dress({ control, label, fault }) {
  label.className = "";
  control.setAttribute("role", "radiogroup");
  control.setAttribute("aria-describedby", fault.id);
  control.focus = () => control.querySelector(":checked").focus();
}
