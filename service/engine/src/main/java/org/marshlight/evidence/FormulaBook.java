package org.marshlight.evidence;

import java.lang.invoke.MethodHandle;
import java.lang.invoke.MethodHandles;
import java.lang.invoke.MethodType;
import java.lang.reflect.Method;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.marshlight.contract.Fault;
import org.marshlight.contract.Faults;
import org.marshlight.contract.Pointer;

/** Every formula of the engine, by id; each can be worked for given inputs. */
public final class FormulaBook {

  private static final FormulaBook STANDARD = load();

  private final Map<String, Worked> byId;

  private FormulaBook(Map<String, Worked> byId) {
    this.byId = byId;
  }

  /** The engine's own book. */
  public static FormulaBook standard() {
    return STANDARD;
  }

  /** All formulas, by id in alphabetical order. */
  public List<FormulaEntry> entries() {
    return byId.values().stream().map(Worked::entry).toList();
  }

  /** The ids of all formulas, in alphabetical order. */
  public Collection<String> ids() {
    return byId.keySet();
  }

  public Optional<FormulaEntry> find(String id) {
    return Optional.ofNullable(byId.get(id)).map(Worked::entry);
  }

  /**
   * The value of a formula.
   *
   * @param id id of the formula
   * @param inputs a value for each of its parameters, by name
   * @throws IllegalArgumentException if there is no such formula
   * @throws Faults if an input is missing, unknown or outside the range of its parameter, or if the
   *     formula has no finite value there
   */
  public double evaluate(String id, Map<String, Double> inputs) {
    Worked formula = byId.get(id);
    if (formula == null) {
      throw new IllegalArgumentException("no formula " + id);
    }
    List<Fault> faults = faults(formula.entry(), inputs);
    if (!faults.isEmpty()) {
      throw new Faults(faults);
    }
    double value = formula.work(inputs);
    if (!Double.isFinite(value)) {
      throw new Faults(
          List.of(Fault.of("evidence.no-finite-value", "/inputs", null, "", "formula", id)));
    }
    return value;
  }

  /**
   * Every input that is missing, out of range or unknown.
   *
   * @param entry the formula
   * @param inputs values by name of the parameter, or those that could be read
   */
  public static List<Fault> faults(FormulaEntry entry, Map<String, Double> inputs) {
    List<Fault> faults = new ArrayList<>();
    for (FormulaEntry.Parameter parameter : entry.parameters()) {
      String pointer = Pointer.child("/inputs", parameter.name());
      String allowed =
          parameter.low()
              + " to "
              + parameter.high()
              + (parameter.unit().equals("1") ? "" : " " + parameter.unit());
      Double value = inputs.get(parameter.name());
      if (value == null) {
        faults.add(
            Fault.of(
                "evidence.input-missing", pointer, null, allowed, "parameter", parameter.name()));
      } else if (!(value >= parameter.low() && value <= parameter.high())) {
        faults.add(
            Fault.of(
                "evidence.input-out-of-range",
                pointer,
                value,
                allowed,
                "parameter",
                parameter.name(),
                "low",
                parameter.low(),
                "high",
                parameter.high()));
      }
    }
    List<String> known = entry.parameters().stream().map(FormulaEntry.Parameter::name).toList();
    for (Map.Entry<String, Double> input : inputs.entrySet()) {
      if (!known.contains(input.getKey())) {
        faults.add(
            Fault.unknown(
                "evidence.input-unknown",
                Pointer.child("/inputs", input.getKey()),
                input.getValue(),
                input.getKey(),
                known,
                String.join(", ", known)));
      }
    }
    return faults;
  }

  private static FormulaBook load() {
    Map<String, Worked> byId = new TreeMap<>();
    for (EvidenceShelf shelf : EvidenceShelves.all()) {
      for (Class<?> type : shelf.formulas()) {
        for (Method method : type.getDeclaredMethods()) {
          if (method.isAnnotationPresent(Formula.class)) {
            Worked formula = Worked.of(method);
            if (byId.put(formula.entry().id(), formula) != null) {
              throw new IllegalStateException("formula listed twice: " + formula.entry().id());
            }
          }
        }
      }
    }
    return new FormulaBook(Collections.unmodifiableMap(byId));
  }

  /** A formula with the handle that works it. */
  private record Worked(FormulaEntry entry, MethodHandle handle) {

    static Worked of(Method method) {
      Formula formula = method.getAnnotation(Formula.class);
      List<FormulaEntry.Parameter> parameters = new ArrayList<>();
      for (var parameter : method.getParameters()) {
        Argument argument = parameter.getAnnotation(Argument.class);
        if (argument == null) {
          throw new IllegalStateException("undescribed argument in " + method);
        }
        parameters.add(
            new FormulaEntry.Parameter(
                parameter.getName(),
                argument.symbol(),
                argument.unit(),
                argument.min(),
                argument.max()));
      }
      FormulaEntry entry =
          new FormulaEntry(
              formula.id(),
              formula.symbol(),
              formula.expression(),
              formula.unit(),
              formula.meaning(),
              formula.source(),
              formula.equation(),
              List.copyOf(parameters));
      try {
        MethodHandle handle =
            MethodHandles.publicLookup()
                .unreflect(method)
                .asSpreader(double[].class, parameters.size())
                .asType(MethodType.methodType(double.class, double[].class));
        return new Worked(entry, handle);
      } catch (IllegalAccessException e) {
        throw new IllegalStateException("not a public static formula: " + method, e);
      }
    }

    double work(Map<String, Double> inputs) {
      double[] arguments = new double[entry.parameters().size()];
      for (int i = 0; i < arguments.length; i++) {
        arguments[i] = inputs.get(entry.parameters().get(i).name());
      }
      try {
        return (double) handle.invokeExact(arguments);
      } catch (RuntimeException | Error e) {
        throw e;
      } catch (Throwable e) {
        throw new IllegalStateException(e);
      }
    }
  }
}
