// React 19 sets properties of elements; earlier ones set attributes, so give order={JSON.stringify(order)} there.
import "cushion-estimate";
import { useEffect, useRef } from "react";

export function Cushion({ order, onAdd }) {
  const element = useRef(null);
  useEffect(() => {
    const heard = ({ detail }) => detail.respondWith(onAdd(detail));
    const listening = element.current;
    listening.addEventListener("add-to-basket", heard);
    return () => listening.removeEventListener("add-to-basket", heard);
  }, [onAdd]);
  return <cushion-estimate ref={element} order={order} service="https://cushions.example" />;
}
