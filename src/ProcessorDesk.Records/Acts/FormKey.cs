namespace ProcessorDesk.Records;

/// <summary>One rendered form that was saved, and where its result is: a second post is led there.</summary>
public sealed class FormKey
{
    private FormKey()
    {
    }

    public FormKey(string key, string result, DateTime at) => (Key, Result, At) = (key, result, at);

    public string Key { get; private set; } = "";

    public string Result { get; private set; } = "";

    public DateTime At { get; private set; }
}
