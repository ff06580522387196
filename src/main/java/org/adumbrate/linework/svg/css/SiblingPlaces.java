package org.adumbrate.linework.svg.css;

import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.Map;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** Which child an element is, counted once for all children of a parent, since each may be asked. */
final class SiblingPlaces {
    /**
     * Where an element stands among its siblings, from 1.
     *
     * @param place among all
     * @param ofType among those of the same name
     * @param all how many there are
     * @param allOfType how many of the same name
     */
    record Place(int place, int ofType, int all, int allOfType) {
        /** The same counted from the last. */
        Place fromEnd() {
            return new Place(all - place + 1, allOfType - ofType + 1, all, allOfType);
        }
    }

    private final IdentityHashMap<Element, Place> places = new IdentityHashMap<>();

    Place of(Element element) {
        Place known = places.get(element);
        if (known != null) {
            return known;
        }
        Node parent = element.getParentNode();
        if (parent == null) {
            return new Place(1, 1, 1, 1);
        }
        count(parent);
        return places.get(element);
    }

    private void count(Node parent) {
        Map<String, Integer> byType = new HashMap<>();
        int all = 0;
        for (Node node = parent.getFirstChild(); node != null; node = node.getNextSibling()) {
            if (node instanceof Element element) {
                all++;
                byType.merge(element.getLocalName(), 1, Integer::sum);
            }
        }
        Map<String, Integer> met = new HashMap<>();
        int place = 0;
        for (Node node = parent.getFirstChild(); node != null; node = node.getNextSibling()) {
            if (node instanceof Element element) {
                int ofType = met.merge(element.getLocalName(), 1, Integer::sum);
                places.put(element, new Place(++place, ofType, all, byType.get(element.getLocalName())));
            }
        }
    }
}
