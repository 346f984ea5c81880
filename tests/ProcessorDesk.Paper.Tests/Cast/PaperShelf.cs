using ProcessorDesk.Paper.Tests.Rendering;

namespace ProcessorDesk.Paper.Tests.Cast;

/// <summary>Every paper drawn and read once, for the tests that ask the same of all.</summary>
public sealed class PaperShelf : IDisposable
{
    private readonly Dictionary<string, RenderedPdf> _papers = [];

    internal RenderedPdf this[string name] => _papers.TryGetValue(name, out var pdf) ? pdf : _papers[name] = new RenderedPdf(EveryPaper.Draw(name));

    public void Dispose()
    {
        foreach (var pdf in _papers.Values)
            pdf.Dispose();
    }
}
