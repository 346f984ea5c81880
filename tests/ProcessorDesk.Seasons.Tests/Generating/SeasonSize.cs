namespace ProcessorDesk.Seasons.Tests.Generating;

/// <summary>How much a made-up shop has behind it.</summary>
/// <param name="Jobs">In each season.</param>
/// <param name="InLastWeeks">How many of a season's jobs come in its last two weeks: those of the last season are still about.</param>
/// <param name="Owners">In all. One in ten brings <see cref="RegularJobs"/> jobs, the others share what is left.</param>
internal sealed record SeasonSize(int Seasons, int Jobs, int InLastWeeks, int Owners)
{
    public const int RegularJobs = 33;

    /// <summary>Enough for every page to have something in each of its states.</summary>
    public static SeasonSize Small { get; } = new(1, 480, 200, 60);

    public static SeasonSize One { get; } = new(1, 10_000, 400, 2_000);

    public static SeasonSize Ten { get; } = One with { Seasons = 10, Owners = 20_000 };

    public int AllJobs => Seasons * Jobs;
}
