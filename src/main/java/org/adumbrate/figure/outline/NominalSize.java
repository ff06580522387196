package org.adumbrate.figure.outline;

import static org.adumbrate.figure.outline.OutlineKind.BIRD;
import static org.adumbrate.figure.outline.OutlineKind.PERSON;
import static org.adumbrate.figure.outline.OutlineKind.PLANT;

import java.util.List;

/**
 * The outlines that come with the program and how large each is where nothing else is said.
 *
 * <p>People, shoes of 25 mm included, to the centimetre:
 *
 * <ul>
 *   <li>adults: medians of stature, men 1755 mm and women 1626 mm (Gordon et al., "2012 Anthropometric Survey of U.S. Army
 *       Personnel", NATICK/TR-15/007, 2014: "ANSUR II"); walking lowers the head by 2 to 3 cm, leaning by 8;
 *   <li>seated: medians of sitting height and popliteal height, men 918 + 430 mm and women 857 + 387 mm (the same survey),
 *       the mean of both;
 *   <li>child: the median stature at six years, boys 1157 mm and girls 1150 mm (Kuczmarski et al., "2000 CDC growth charts for
 *       the United States", Vital and Health Statistics 11 (246), 2002), in shoes of 15 mm;
 *   <li>wheelchair user: an eye height of 1090 to 1295 mm (U.S. Department of Justice, "ADA Standards for Accessible
 *       Design", 1991, figure A3), in the middle, and the 114 mm from the eye to the top of the head of the men of the survey.
 * </ul>
 *
 * <p>Plants are as tall as they usually are a few years after planting, birds as wide as a gull, a dove and a swallow.
 *
 * @param name the outline's name
 * @param kind what it shows
 * @param metres its nominal height, for a bird its span
 */
record NominalSize(String name, OutlineKind kind, double metres) {
    static final List<NominalSize> ALL = List.of(
            new NominalSize("standing", PERSON, 1.78),
            new NominalSize("arms-folded", PERSON, 1.65),
            new NominalSize("walking", PERSON, 1.75),
            new NominalSize("strolling", PERSON, 1.64),
            new NominalSize("hand-in-hand", PERSON, 1.76),
            new NominalSize("with-bag", PERSON, 1.63),
            new NominalSize("seated", PERSON, 1.32),
            new NominalSize("leaning", PERSON, 1.70),
            new NominalSize("child", PERSON, 1.17),
            new NominalSize("wheelchair", PERSON, 1.31),
            new NominalSize("cyclist", PERSON, 1.70),
            new NominalSize("bush-round", PLANT, 1.00),
            new NominalSize("bush-low", PLANT, 0.40),
            new NominalSize("shrub", PLANT, 1.20),
            new NominalSize("grass-tuft", PLANT, 0.45),
            new NominalSize("grass-tall", PLANT, 1.50),
            new NominalSize("fern", PLANT, 0.80),
            new NominalSize("tree-young", PLANT, 3.60),
            new NominalSize("bird-gliding", BIRD, 1.00),
            new NominalSize("bird-wings-up", BIRD, 0.60),
            new NominalSize("bird-banking", BIRD, 0.32));
}
