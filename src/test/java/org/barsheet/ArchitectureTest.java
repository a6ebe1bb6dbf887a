package org.barsheet;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** The floors of the house: a package uses only packages below it, and nothing goes in a circle. */
@AnalyzeClasses(packages = "org.barsheet", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

  @ArchTest
  static final ArchRule every_floor_stands_on_the_floors_below_it =
      layeredArchitecture()
          .consideringOnlyDependenciesInLayers()
          .withOptionalLayers(true)
          .layer("input")
          .definedBy("org.barsheet.input..")
          .layer("clock")
          .definedBy("org.barsheet.clock..")
          .layer("score")
          .definedBy("org.barsheet.score..")
          .layer("clips")
          .definedBy("org.barsheet.clips..")
          .layer("pulse")
          .definedBy("org.barsheet.pulse..")
          .layer("motif")
          .definedBy("org.barsheet.motif..")
          .layer("plan")
          .definedBy("org.barsheet.plan..")
          .layer("timing")
          .definedBy("org.barsheet.timing..")
          .layer("exposure")
          .definedBy("org.barsheet.exposure..")
          .layer("workbook")
          .definedBy("org.barsheet.workbook..")
          .layer("handoff")
          .definedBy("org.barsheet.handoff..")
          .layer("review")
          .definedBy("org.barsheet.review..")
          .layer("production")
          .definedBy("org.barsheet.production..")
          .layer("cli")
          .definedBy("org.barsheet.cli..")
          .whereLayer("input")
          .mayNotAccessAnyLayer()
          .whereLayer("clock")
          .mayOnlyAccessLayers("input")
          .whereLayer("score")
          .mayOnlyAccessLayers("input", "clock")
          .whereLayer("clips")
          .mayOnlyAccessLayers("input", "clock")
          .whereLayer("pulse")
          .mayOnlyAccessLayers("input", "clock", "score")
          .whereLayer("motif")
          .mayOnlyAccessLayers("input", "clock", "score")
          .whereLayer("plan")
          .mayOnlyAccessLayers("input", "clock", "score", "pulse", "motif")
          .whereLayer("timing")
          .mayOnlyAccessLayers("input", "clock", "score", "pulse", "motif", "plan")
          .whereLayer("exposure")
          .mayOnlyAccessLayers(
              "input", "clock", "score", "clips", "pulse", "motif", "plan", "timing")
          .whereLayer("workbook")
          .mayOnlyBeAccessedByLayers("production")
          .whereLayer("handoff")
          .mayOnlyBeAccessedByLayers("production")
          .whereLayer("review")
          .mayOnlyBeAccessedByLayers("production")
          .whereLayer("production")
          .mayOnlyBeAccessedByLayers("cli")
          .whereLayer("cli")
          .mayNotBeAccessedByAnyLayer()
          .because("data flows one way: score and plan, timing, exposure, print-outs");

  @ArchTest
  static final ArchRule no_package_depends_on_itself_through_others =
      slices().matching("org.barsheet.(*)..").should().beFreeOfCycles();

  @ArchTest
  static final ArchRule only_the_command_line_ends_the_program =
      com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses()
          .that(
              com.tngtech.archunit.base.DescribedPredicate.not(
                  resideInAPackage("org.barsheet.cli..")))
          .should()
          .callMethod(System.class, "exit", int.class)
          .because("exits scattered over the code lose a person's work");
}
