package org.adumbrate;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** Holds the arrows between the rooms of the house. A package named here in vain fails the test. */
@AnalyzeClasses(packages = "org.adumbrate", importOptions = ImportOption.DoNotIncludeTests.class)
class HouseRulesTest {
    @ArchTest
    static final ArchRule arrowsPointOneWay = layeredArchitecture()
            .consideringOnlyDependenciesInLayers()
            .layer("fault")
            .definedBy("org.adumbrate.fault..")
            .layer("geometry")
            .definedBy("org.adumbrate.geometry..")
            .layer("output")
            .definedBy("org.adumbrate.output..")
            .layer("linework")
            .definedBy("org.adumbrate.linework..")
            .layer("raster")
            .definedBy("org.adumbrate.raster..")
            .layer("registration")
            .definedBy("org.adumbrate.registration..")
            .layer("perspective")
            .definedBy("org.adumbrate.perspective..")
            .layer("figure")
            .definedBy("org.adumbrate.figure..")
            .layer("underlay")
            .definedBy("org.adumbrate.underlay..")
            .layer("drawing")
            .definedBy("org.adumbrate.drawing..")
            .layer("report")
            .definedBy("org.adumbrate.report..")
            .layer("sheetfile")
            .definedBy("org.adumbrate.sheetfile..")
            .layer("build")
            .definedBy("org.adumbrate.build..")
            .layer("cli")
            .definedBy("org.adumbrate.cli..")
            .whereLayer("cli")
            .mayNotBeAccessedByAnyLayer()
            .whereLayer("build")
            .mayOnlyBeAccessedByLayers("cli")
            .whereLayer("report")
            .mayOnlyBeAccessedByLayers("build", "cli")
            .whereLayer("report")
            .mayOnlyAccessLayers(
                    "drawing", "registration", "perspective", "raster", "linework", "geometry", "output", "fault")
            .whereLayer("sheetfile")
            .mayOnlyBeAccessedByLayers("build", "cli")
            .whereLayer("sheetfile")
            .mayOnlyAccessLayers("geometry", "fault")
            .whereLayer("drawing")
            .mayOnlyBeAccessedByLayers("report", "build", "cli")
            .whereLayer("figure")
            .mayOnlyBeAccessedByLayers("drawing", "build", "cli")
            .whereLayer("perspective")
            .mayOnlyBeAccessedByLayers("figure", "underlay", "drawing", "report", "build", "cli")
            .whereLayer("perspective")
            .mayOnlyAccessLayers("linework", "geometry", "fault")
            .whereLayer("underlay")
            .mayOnlyBeAccessedByLayers("drawing", "build", "cli")
            .whereLayer("registration")
            .mayOnlyBeAccessedByLayers("underlay", "drawing", "report", "build", "cli")
            .whereLayer("linework")
            .mayOnlyAccessLayers("geometry", "fault")
            .whereLayer("raster")
            .mayOnlyAccessLayers("geometry", "fault", "output")
            .whereLayer("output")
            .mayOnlyAccessLayers("fault")
            .whereLayer("geometry")
            .mayNotAccessAnyLayer()
            .whereLayer("fault")
            .mayNotAccessAnyLayer();

    @ArchTest
    static final ArchRule arrowsPointOneWayWithinTheSheetFile = layeredArchitecture()
            .consideringOnlyDependenciesInLayers()
            .layer("complaint")
            .definedBy("org.adumbrate.sheetfile.complaint")
            .layer("yaml")
            .definedBy("org.adumbrate.sheetfile.yaml")
            .layer("grammar")
            .definedBy("org.adumbrate.sheetfile")
            .layer("form")
            .definedBy("org.adumbrate.sheetfile.form")
            .layer("reading")
            .definedBy("org.adumbrate.sheetfile.reading")
            .layer("schema")
            .definedBy("org.adumbrate.sheetfile.schema")
            .whereLayer("schema")
            .mayNotBeAccessedByAnyLayer()
            .whereLayer("reading")
            .mayNotBeAccessedByAnyLayer()
            .whereLayer("form")
            .mayOnlyBeAccessedByLayers("reading", "schema")
            .whereLayer("grammar")
            .mayOnlyAccessLayers("complaint")
            .whereLayer("yaml")
            .mayOnlyAccessLayers("complaint")
            .whereLayer("complaint")
            .mayNotAccessAnyLayer();

    @ArchTest
    static final ArchRule noRings =
            slices().matching("org.adumbrate.(**)").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule imageLibrariesStayInTheCodecs = noClasses()
            .that()
            .resideOutsideOfPackage("org.adumbrate.raster.decode..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("javax.imageio..", "com.twelvemonkeys..", "org.apache.commons.imaging..")
            .because("third parties stay in their room");

    @ArchTest
    static final ArchRule thePdfLibraryStaysInReadersAndWriters = noClasses()
            .that()
            .resideOutsideOfPackages("org.adumbrate.linework..", "org.adumbrate.drawing..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("org.apache.pdfbox..")
            .because("third parties stay in their room");

    @ArchTest
    static final ArchRule theCommandLineStaysInCli = noClasses()
            .that()
            .resideOutsideOfPackage("org.adumbrate.cli..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("picocli..")
            .because("third parties stay in their room");

    @ArchTest
    static final ArchRule polygonsStayInGeometryAndItsNearNeighbours = noClasses()
            .that()
            .resideOutsideOfPackages("org.adumbrate.geometry..", "org.adumbrate.linework..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("org.locationtech.jts..")
            .because("third parties stay in their room");

    @ArchTest
    static final ArchRule solarPositionsStayInPerspective = noClasses()
            .that()
            .resideOutsideOfPackage("org.adumbrate.perspective..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("net.e175..")
            .because("third parties stay in their room");

    @ArchTest
    static final ArchRule yamlStaysInTheSheetFile = noClasses()
            .that()
            .resideOutsideOfPackage("org.adumbrate.sheetfile..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("org.snakeyaml..")
            .because("third parties stay in their room");

    @ArchTest
    static final ArchRule onlyTheCommandLinePrints = noClasses()
            .that()
            .resideOutsideOfPackage("org.adumbrate.cli..")
            .should()
            .accessField(System.class, "out")
            .orShould()
            .accessField(System.class, "err");
}
