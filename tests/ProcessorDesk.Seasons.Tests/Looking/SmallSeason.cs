using ProcessorDesk.Seasons.Tests.Generating;

namespace ProcessorDesk.Seasons.Tests.Looking;

/// <summary>A few hundred jobs: enough for every page to have something to show.</summary>
public sealed class SmallSeason() : SeasonUnderTest(SeasonSize.Small);
