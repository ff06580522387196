package org.adumbrate.linework.pens;

import java.nio.file.Path;
import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.adumbrate.linework.LineSheet;

/** What names say: of the layer of a colour, and of a file that alone among several holds it. */
final class NameClues {
    /** The beginnings of words for each role, in the tongues of the trade, accents left out; the first that fits counts. */
    private static final List<Map.Entry<LineRole, Pattern>> WORDS = List.of(
            words(LineRole.HEIGHT_LINES, "height|people|person|human|scale figure|mensch|hohe|gente|hauteur|altezza"),
            words(LineRole.CUT, "cut|section|poche|schnitt|coupe|sezione|corte|seccion|snede"),
            words(LineRole.PLANTING, "tree|plant|veg|shrub|hedge|foliage|baum|pflanz|arbre|alber|arbol|boom|bomen"),
            words(LineRole.FURNITURE, "furn|fitting|equip|mobel|moebel|meub|mobil|arred|mueble"),
            words(LineRole.GLASS, "glas|glaz|pane|verre|vitr|vetr|vidr|cristal"),
            words(LineRole.PAVING, "pav|tile|joint|pattern|belag|pflaster|fliese|dallage|carrel|piso|baldosa"),
            words(LineRole.GROUND, "ground|terrain|topo|earth|grade|gelande|terren|suelo|maaiveld"),
            words(LineRole.NEIGHBOUR, "neigh|context|surround|nachbar|umgebung|voisin|contest|entorno|vecin"),
            words(LineRole.BUILDING, "build|wall|roof|struct|gebaude|wand|dach|mur|toit|edific|tetto|gebouw"));

    private NameClues() {}

    private static Map.Entry<LineRole, Pattern> words(LineRole role, String beginnings) {
        return Map.entry(role, Pattern.compile("(?:^|[^a-z])(?:" + beginnings + ")"));
    }

    static Optional<Clue> of(ColorLook look, List<LineSheet> sheets) {
        Optional<Clue> byLayer = look.layer()
                .flatMap(name -> role(name).map(role -> new Clue(role, "its layer is called \"" + name + "\"")));
        return byLayer.isPresent() || look.sheets().size() > 1 || sheets.size() == 1 ? byLayer : byFile(look);
    }

    private static Optional<Clue> byFile(ColorLook look) {
        Path file = look.sheets().get(0).file().getFileName();
        return role(file.toString()).map(role -> new Clue(role, "only " + file + " holds it"));
    }

    private static Optional<LineRole> role(String name) {
        String plain = Normalizer.normalize(name.toLowerCase(Locale.ROOT), Normalizer.Form.NFD)
                .replaceAll("\\p{M}", "");
        return WORDS.stream()
                .filter(entry -> entry.getValue().matcher(plain).find())
                .map(Map.Entry::getKey)
                .findFirst();
    }
}
