using Xunit;

namespace ProcessorDesk.Seasons.Tests.Looking;

/// <summary>Fails with every finding spelt out; the framework's own message would cut them short.</summary>
internal static class Expect
{
    public static void None(IEnumerable<(string Page, string Words)> findings)
    {
        var list = findings.ToList();
        Assert.True(list.Count == 0, string.Join('\n', list.Select(finding => $"{finding.Page}: {finding.Words}")));
    }
}
