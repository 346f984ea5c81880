namespace ProcessorDesk.Trade.Process;

/// <summary>What the record says of one step of a cooling option.</summary>
/// <param name="Step">The step.</param>
/// <param name="Probe">The slowest probe, which counts; null without readings.</param>
/// <param name="Verdict">Of this step.</param>
/// <param name="Shown">Time the record shows, gaps counting for nothing, in minutes, exactly; the step took at least that long.</param>
/// <param name="From">When the clock of that probe started, to the tick below; null where the record does not show it.</param>
public sealed record CoolingStepCheck(CoolingStep Step, int? Probe, ProcessVerdict Verdict, Ratio Shown, DateTime? From)
{
    /// <summary>From its beginning to its end as far as the record shows them, gaps in it; null without readings.</summary>
    public Stretch? When { get; init; }

    /// <summary>The time shown, up to the second, under a minute to its tenth.</summary>
    public TimeSpan Found => ProcessTime.Up(Shown * Ratio.Of(TimeSpan.TicksPerMinute, 1));
}

/// <summary>What a chilling record says of a cooling option.</summary>
/// <param name="Verdict">The least of its steps'.</param>
/// <param name="Option">What it was held against.</param>
/// <param name="Steps">Each step's own verdict, in order.</param>
/// <param name="Findings">One for each step that is not met, and what else a person should know.</param>
public sealed record CoolingCheck(
    ProcessVerdict Verdict, CoolingOption Option, IReadOnlyList<CoolingStepCheck> Steps, IReadOnlyList<Finding> Findings)
{
    /// <summary>The least of the steps that have a time; a step that only has to be reached is told in the findings.</summary>
    public ProcessVerdict OfTimedSteps => Steps.Where(step => step.Step.AtMost is not null).Min(step => step.Verdict);

    public string Source => Option.Source;

    /// <summary>"meets the cooling option", "does not meet", "not shown by the record".</summary>
    public string Words => Verdict.Words("the cooling option");
}
