using ProcessorDesk.Records.Tests.Plans;

namespace ProcessorDesk.Seasons.Tests.Looking;

/// <summary>One page opened once: which, how it answered, what it asked of the records, and how long the server took.</summary>
/// <param name="Page">As the app names it: "/Find/Job".</param>
/// <param name="Address">With its ids and its query.</param>
internal sealed record PageLoad(string Page, string Address, int Status, IReadOnlyList<SeenQuery> Queries, TimeSpan Took);
