using System.Net;
using ProcessorDesk.Web.Tests.Harness;
using Xunit;

namespace ProcessorDesk.Web.Tests.Durability;

/// <summary>
/// One hand at one browser, who fills in a form, sends it, and notes it in a ledger before and after. A form whose answer was
/// lost is sent again as it stands when the shop is there again.
/// </summary>
internal abstract class Writer(int by, string button) : IDisposable
{
    private readonly List<SentForm> _ledger = [];
    private readonly Queue<Filled> _taken = [];
    private Filled? _open;
    private Filled? _last;

    protected Desk Desk { get; } = new(new Uri("http://127.0.0.1"), follows: false);

    protected int By => by;

    public IReadOnlyList<SentForm> Ledger => _ledger;

    /// <summary>The key of the form that waits to be sent again; null where every answer was had.</summary>
    public string? Lost => _open?.Entry.Key;

    public int Resent { get; private set; }

    public async Task SignIn(Uri address, string station)
    {
        Desk.MoveTo(address);
        Assert.Equal(HttpStatusCode.Found, (await Desk.ComeIn(by, station)).Status);
    }

    /// <summary>Writes without a pause until the moment comes.</summary>
    public async Task Write(Uri address, CutMoment until)
    {
        Desk.MoveTo(address);
        var underWay = false;
        try
        {
            if (_open is not null)
                Resent++;
            while (!until.IsPast)
            {
                _open ??= await FillIn();
                underWay = !until.IsPast;
                await Send(_open, until);
                (_last, _open, underWay) = (_open, null, false);
            }
        }
        catch (Exception gone) when (until.IsPast && gone is HttpRequestException or IOException)
        {
            if (underWay)
                until.Hits();
        }
    }

    /// <summary>Sends what was lost once more; and what was answered too, which must lead to the same place.</summary>
    public async Task Settle(Uri address)
    {
        Desk.MoveTo(address);
        foreach (var filled in new[] { _last, _open }.OfType<Filled>())
        {
            var before = filled.Entry.Answer;
            await Send(filled, CutMoment.Never);
            Assert.Equal(before ?? filled.Entry.Answer, filled.Entry.Answer);
            Resent++;
        }

        _open = null;
    }

    /// <summary>Takes up and fills in forms, to be sent later.</summary>
    public async Task TakeUp(int forms)
    {
        while (_taken.Count < forms)
            _taken.Enqueue(await FillIn());
    }

    /// <summary>Sends what was taken up, one form after another; how long the slowest took.</summary>
    public async Task<TimeSpan> SendAll()
    {
        var slowest = TimeSpan.Zero;
        while (_taken.TryDequeue(out var filled))
        {
            var started = TimeProvider.System.GetTimestamp();
            await Send(filled, CutMoment.Never);
            var took = TimeProvider.System.GetElapsedTime(started);
            slowest = took > slowest ? took : slowest;
        }

        return slowest;
    }

    public void Dispose() => Desk.Dispose();

    /// <summary>A fresh form, filled in and not yet sent, with its line for the ledger.</summary>
    protected abstract Task<(Screen Page, SentForm Entry)> Fresh();

    protected async Task<Screen> Open(string path)
    {
        var page = await Desk.Open(path);
        Assert.True(page.Status == HttpStatusCode.OK, $"{path} answered {(int)page.Status}: {page.Text}");
        return page;
    }

    private async Task<Filled> FillIn()
    {
        var (page, entry) = await Fresh();
        _ledger.Add(entry);
        return new Filled(page, entry);
    }

    private async Task Send(Filled filled, CutMoment until)
    {
        var answering = filled.Page.Press(button);
        until.Sent();
        var answer = await answering;
        Assert.True(answer.Status == HttpStatusCode.Found, $"{filled.Page.Path} answered {(int)answer.Status}: {answer.Text}");
        filled.Entry.Answer = answer.Headers["Location"];
        until.Answered();
    }

    private sealed record Filled(Screen Page, SentForm Entry);
}
