package org.marshlight;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaCall;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.List;
import java.util.Set;

/** The shape of the house, as rules. */
@AnalyzeClasses(packages = "org.marshlight", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

  /** Packages in the order in which the data flow; each may use only those before it. */
  private static final List<String> ORDER =
      List.of(
          "contract",
          "evidence",
          "statistics",
          "climate",
          "feed",
          "digester",
          "wetland",
          "crop",
          "ethanol",
          "compost",
          "economy",
          "loop",
          "decision",
          "study",
          "safety",
          "");

  private static final Set<String> PLATFORM_DEPENDENT =
      Set.of(
          "sin", "cos", "tan", "asin", "acos", "atan", "atan2", "exp", "expm1", "log", "log10",
          "log1p", "pow", "sinh", "cosh", "tanh", "cbrt", "hypot");

  @ArchTest
  static final ArchRule packagesUseOnlyThoseBeforeThem =
      classes().should(useOnlyPackagesBeforeTheirOwn());

  @ArchTest
  static final ArchRule packagesHaveNoCycles =
      slices().matching("org.marshlight.(*)..").should().beFreeOfCycles();

  @ArchTest
  static final ArchRule engineKnowsNoFramework =
      noClasses()
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "io.quarkus..",
              "io.smallrye..",
              "jakarta.ws..",
              "jakarta.inject..",
              "jakarta.enterprise..",
              "com.fasterxml..",
              "org.eclipse.microprofile..");

  @ArchTest
  static final ArchRule arithmeticIsTheSameOnEveryMachine =
      classes().should(callNoPlatformDependentMath());

  @ArchTest
  static final ArchRule designsHoldBoxedValues =
      classes().that().haveSimpleNameEndingWith("Design").should(haveNoPrimitiveFields());

  private static ArchCondition<JavaClass> useOnlyPackagesBeforeTheirOwn() {
    return new ArchCondition<>("use only packages before their own") {
      @Override
      public void check(JavaClass type, ConditionEvents events) {
        int own = rank(type);
        type.getDirectDependenciesFromSelf().stream()
            .filter(d -> d.getTargetClass().getPackageName().startsWith("org.marshlight"))
            .filter(d -> rank(d.getTargetClass()) > own)
            .forEach(d -> events.add(SimpleConditionEvent.violated(type, d.getDescription())));
      }
    };
  }

  private static int rank(JavaClass type) {
    String rest = type.getPackageName().substring("org.marshlight".length());
    String name = rest.isEmpty() ? "" : rest.substring(1);
    int rank = ORDER.indexOf(name);
    if (rank < 0) {
      throw new IllegalStateException("package without a place in the order: " + name);
    }
    return rank;
  }

  private static ArchCondition<JavaClass> callNoPlatformDependentMath() {
    return new ArchCondition<>("call no platform-dependent function of Math") {
      @Override
      public void check(JavaClass type, ConditionEvents events) {
        for (JavaCall<?> call : type.getMethodCallsFromSelf()) {
          if (call.getTargetOwner().isEquivalentTo(Math.class)
              && PLATFORM_DEPENDENT.contains(call.getName())) {
            events.add(SimpleConditionEvent.violated(type, call.getDescription()));
          }
        }
      }
    };
  }

  private static ArchCondition<JavaClass> haveNoPrimitiveFields() {
    return new ArchCondition<>("have no primitive fields") {
      @Override
      public void check(JavaClass type, ConditionEvents events) {
        for (JavaField field : type.getFields()) {
          boolean constant = field.getModifiers().contains(JavaModifier.STATIC);
          if (!constant && field.getRawType().isPrimitive()) {
            events.add(SimpleConditionEvent.violated(field, field.getDescription()));
          }
        }
      }
    };
  }
}
